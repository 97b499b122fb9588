// A photo made small enough to keep and send: at most `most` pixels on its longer side, as JPEG.

export const longestSide = 2000;

/** The size of a picture shrunk so that its longer side fits; never made larger. */
export function shrunkSize(width: number, height: number, most = longestSide) {
  const factor = Math.min(1, most / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * factor)), height: Math.max(1, Math.round(height * factor)) };
}

export async function shrunk(file: Blob, most = longestSide): Promise<Blob> {
  const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" });
  const { width, height } = shrunkSize(bitmap.width, bitmap.height, most);
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  canvas.getContext("2d")!.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  return new Promise((done, failed) => canvas.toBlob(
    (blob) => (blob ? done(blob) : failed(new Error("no picture"))), "image/jpeg", 0.85));
}

export function asText(blob: Blob): Promise<string> {
  return new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () => done(reader.result as string);
    reader.onerror = () => failed(reader.error);
    reader.readAsDataURL(blob);
  });
}

/** The bytes of a data address that `asText` made. */
export function asBlob(text: string): Blob {
  const [head, body] = text.split(",");
  const bytes = Uint8Array.from(atob(body ?? ""), (c) => c.charCodeAt(0));
  return new Blob([bytes], { type: /^data:([^;]*)/.exec(head!)?.[1] ?? "image/jpeg" });
}
