/** Title of the job that comes with the page (examples/demo.json; a test holds them together). */
export const exampleTitle = "Potter's studio, Wrensnest, Ashlow Green";
