// Written by scripts/job_types.mjs from schema/job.json; do not edit.

/** A bare number (then it was measured), or an object that says how well it is known. */
export type Fact = number | FactObject;

export interface FactObject {
  /** The figure, when one is known. */
  value?: number | null;
  /** The lowest it may be; at most high. */
  low?: number | null;
  /** The highest it may be. */
  high?: number | null;
  /** How it is known. Left out: a value was measured, a range is assumed. */
  basis?: "measured" | "declared" | "assumed" | null;
  /** How it lies between low and high, for chances: even (so when left out), or bell, gathered about the middle, low to high being what 95 of 100 would keep within. */
  spread?: "even" | "bell" | null;
}

export interface Device {
  /** The standard it is made to. */
  standard: "BS 88-2" | "BS 88-3" | "BS 1361" | "BS 3036" | "BS EN 60898" | "BS EN 61009" | "BS EN 60947-2";
  /** Curve of a circuit breaker; left out for a fuse. */
  curve?: "B" | "C" | "D" | null;
  /** Rated current In, in amperes. */
  rating_a: number;
}

export interface Job {
  /** Which format this is. */
  format: "toft-job/1";
  /** What the job is called. */
  title?: string | null;
  /** Whose rules judge it: uk, those of BS 7671. */
  rulebook?: "uk" | null;
  /** The supply where it enters the house: what the operator gives, and the house's own switchgear and earth. */
  intake: {
    /** Number of phases of the supply, 1 or 3; 1 when left out. */
    phases?: number | null;
    /** Nominal voltage from line to earth, in volts; 230 when left out. */
    u0_v?: number | null;
    /** How the supply is earthed: TN-S, an earth of its own from the operator (often the cable's sheath); TN-C-S, an earth joined to the operator's neutral; TT, the house's own rod. */
    earthing: "TN-S" | "TN-C-S" | "TT";
    /** External earth fault loop impedance Ze at the origin, in ohms. */
    ze_ohm?: Fact | null;
    /** The largest Ze that the operator declares, in ohms. */
    ze_declared_ohm?: Fact | null;
    /** Impedance of the supply from line to neutral at the origin, in ohms. */
    line_neutral_loop_ohm?: Fact | null;
    /** Largest prospective fault current between live conductors at the origin, in kiloamperes: of one phase from line to neutral; of three phases that of all three lines together, which is about twice the reading from line to neutral. */
    pscc_ka?: Fact | null;
    /** Prospective fault current from line to earth at the origin, in kiloamperes. */
    pefc_ka?: Fact | null;
    /** The operator's fuse at the intake. */
    service_fuse?: Device | null;
    /** True when the supply is looped to or from a neighbour's. */
    looped?: boolean | null;
    /** Copper section of the network operator's neutral, in square millimetres; not that of the tails. */
    supply_neutral_mm2?: Fact | null;
    /** Section of the tails between meter and board, in square millimetres. */
    tails_mm2?: Fact | null;
    /** Length of the tails, in metres. */
    tails_m?: Fact | null;
    /** Copper section of the house's earthing conductor, in square millimetres; 0 for none. */
    earthing_conductor_mm2?: Fact | null;
    /** Copper section of the main bonding at the house, in square millimetres; 0 for none. */
    main_bonding_mm2?: Fact | null;
    /** Resistance of the house's own earth electrode, in ohms (a TT supply). */
    electrode_ohm?: Fact | null;
    /** The house's distribution board. */
    board?: {
      /** Number of free ways. */
      spare_ways?: Fact | null;
      /** Rating of the largest device that a way of the board takes, in amperes. */
      max_device_a?: Fact | null;
      /** True when the RCD before the free ways is of the delayed sort. */
      rcd_delayed?: boolean | null;
      /** What the RCD before the free ways sees. */
      rcd_type?: "AC" | "A" | "F" | "B" | null;
      /** Short-circuit capacity that the board and its devices are rated for, in kiloamperes. */
      breaking_ka?: Fact | null;
      /** Standard of the devices that the board's ways take; left out for a modern board of circuit breakers. */
      takes?: "BS 88-2" | "BS 88-3" | "BS 1361" | "BS 3036" | "BS EN 60898" | "BS EN 61009" | "BS EN 60947-2" | null;
      /** Sensitivity of the RCD that stands before the free ways, in milliamperes; 0 for none. */
      behind_rcd_ma?: Fact | null;
    } | null;
    /** True when a switch between meter and board lets the electrician isolate it. */
    isolator?: boolean | null;
    /** Rating of the main switch of the house's board, in amperes. */
    main_switch_a?: Fact | null;
    /** Demand that the network operator has agreed to, in amperes. */
    agreed_demand_a?: Fact | null;
    /** Greatest demand of the house as it is, in amperes. */
    demand_a?: Fact | null;
    /** Resistance to the ground of everything that the house's earthing terminal joins, when the supply has lost its neutral: electrodes, metal pipes, steel, in ohms. */
    earth_without_neutral_ohm?: Fact | null;
  };
  /** The ground between the buildings. */
  ground?: {
    /** What the ground is. */
    soil?: "clay" | "loam" | "sand" | "gravel" | "chalk" | "rock" | "made ground" | "peat" | null;
    /** Electrical resistivity of the soil, in ohm metres. */
    resistivity_ohm_m?: Fact | null;
    /** Layers of soil from the surface down, where somebody knows them; instead of resistivity_ohm_m or readings. */
    layers?: Array<{
      /** Its electrical resistivity, in ohm metres. */
      resistivity_ohm_m: Fact;
      /** Its thickness, in metres; left out of the last, which has no end. */
      thickness_m?: number | null;
    }> | null;
    /** Readings of soil resistivity with four pins in a line, evenly apart (Wenner), from the nearest to the farthest. */
    wenner?: Array<{
      /** Distance from pin to pin, in metres. */
      spacing_m: number;
      /** What the meter read, in ohms. */
      resistance_ohm: number;
      /** How deep the pins were driven, in metres; left out: as points. */
      pin_depth_m?: number | null;
    }> | null;
    /** Readings with four pins of which the inner two stay close (Schlumberger), from the nearest to the farthest. */
    schlumberger?: Array<{
      /** Distance between the two current pins, in metres. */
      current_pins_m: number;
      /** Distance between the two potential pins, in metres. */
      potential_pins_m: number;
      /** What the meter read, in ohms. */
      resistance_ohm: number;
    }> | null;
    /** What single rods read, alone, as they were driven. */
    driven_rod?: Array<{
      /** Length of the rod in the ground, in metres. */
      length_m: number;
      /** Diameter of the rod, in millimetres. */
      diameter_mm: number;
      /** What the meter read, in ohms. */
      resistance_ohm: number;
    }> | null;
    /** When layers, readings or resistivity were found out: a soil read wet will be worse when it dries. */
    read_when?: "wet season" | "dry season" | null;
    /** Thermal resistivity of the soil, in kelvin metres per watt. */
    thermal_resistivity_k_m_per_w?: Fact | null;
    /** Temperature of the ground at the cable's depth in the warmest season, in degrees Celsius. */
    temperature_c?: Fact | null;
  } | null;
  /** The house and the buildings that are fed. */
  buildings: Array<{
    /** Name by which runs call the building; no two alike. */
    id: string;
    /** What people call the building. */
    name?: string | null;
    /** "origin" for the one building with the intake; left out for all others. */
    at?: "origin" | null;
    /** Where the building stands: metres east and metres north of the house, each from -2000 to 2000. */
    at_m?: [number, number] | null;
    /** What the building is for. */
    use?: "shed" | "garage" | "store" | "office" | "studio" | "workshop" | "gym" | "greenhouse" | "stable" | "animal house" | "pool house" | "hot tub" | "caravan pitch" | "boat mooring" | "other" | null;
    /** What the building is made of. */
    construction?: "timber" | "brick" | "stone" | "insulated panel" | "steel frame" | "aluminium frame" | "steel container" | "canvas" | null;
    /** True when metal of the building stands in the ground or touches it. */
    stands_in_ground?: boolean | null;
    /** Metal parts that enter or belong to the building. An empty list says that there are none; left out, it is not known. */
    metalwork?: Array<{
      /** What the part is. */
      what: "water pipe" | "gas pipe" | "oil pipe" | "heating pipe" | "structural steel" | "frame" | "drain" | "lightning rod" | "fence" | "cable screen" | "other";
      /** What it is made of. */
      material?: "copper" | "steel" | "iron" | "lead" | "aluminium" | "other" | null;
      /** Where it comes from; the ground when left out. */
      comes_from?: "ground" | "house" | "other building" | null;
      /** True when a plastic section parts it from where it comes from. */
      insulating_section?: boolean | null;
      /** True when the same part is bonded at the house. */
      bonded_at_house?: boolean | null;
      /** Resistance measured from the part to the main earthing terminal, in kiloohms. */
      resistance_to_met_kohm?: Fact | null;
      /** From the building, for a part that does not enter it, such as a fence, in metres. */
      distance_m?: Fact | null;
      /** Where the part runs, for the picture of the place: from where it comes to the building. No calculation reads it. */
      through_m?: [number, number][] | null;
    }> | null;
    /** Distance from the building to the nearest thing joined to the house's earth that a person may touch, in metres. */
    reach_of_house_earth_m?: Fact | null;
    /** The earth rods that the building has or would get. */
    electrode?: {
      /** What it is; rods when left out. */
      kind?: "rods" | "buried wire" | "ring" | "plate" | "mesh" | "foundation" | null;
      /** Number of rods. */
      rods?: Fact | null;
      /** How several rods stand; in a line when left out. */
      arrangement?: "line" | "triangle" | "square" | null;
      /** Distance from rod to rod, in metres; a rod's length when left out. */
      spacing_m?: Fact | null;
      /** Length of one rod in the ground, of a wire, of a side of a plate, mesh or foundation; the diameter of a ring; in metres. */
      length_m?: Fact | null;
      /** The other side of a plate or mesh, or the width of a foundation's concrete, in metres. */
      width_m?: Fact | null;
      /** Diameter of rod or wire, in millimetres. */
      diameter_mm?: Fact | null;
      /** How deep wires and the centre of a plate lie; for rods, how deep their tops are; in metres. */
      depth_m?: Fact | null;
      /** Meshes along the length. */
      meshes_along?: number | null;
      /** Meshes across the width. */
      meshes_across?: number | null;
      /** A membrane or insulation lies between foundation and ground. */
      membrane?: boolean | null;
      /** Resistance to earth of all rods together, in ohms. */
      resistance_ohm?: Fact | null;
      /** Readings of a test with two spikes, by growing distance of the potential spike. */
      fall_of_potential?: Array<{
        /** From the electrode to the current spike, in metres. */
        current_m: number;
        /** From the electrode to the potential spike on the same line, in metres. */
        potential_m: number;
        /** What the meter read, in ohms. */
        resistance_ohm: number;
      }> | null;
      /** From the electrode to the nearest buried metal on the house's earth, in metres. */
      from_house_earth_m?: Fact | null;
      /** Where it stands, for the picture of the place: metres east and metres north of the house, each from -2000 to 2000. No calculation reads it. */
      at_m?: [number, number] | null;
    } | null;
    /** Circuits of the building; their loads are added up when the building states none. */
    circuits?: Array<{
      /** What it is called on the board. */
      name: string;
      /** What it feeds. */
      kind: "socket ring" | "socket radial" | "lighting" | "fixed load" | "motor" | "welder" | "vehicle charging" | "hot tub" | "sauna" | "kiln" | "heat pump" | "pump" | "freezer" | "solar" | "battery" | "sub-board" | "cooker" | "shower" | "water heater" | "storage heater";
      /** Phases it is connected to, 1 or 3; 1 when left out. */
      phases?: number | null;
      /** Its load, in watts; of solar and batteries what they may send out, of batteries what they charge with too. Without load_w and device a circuit has the usual rating of its kind where there is one. */
      load_w?: Fact | null;
      /** Power factor of its load; 1 for heating. */
      power_factor?: Fact | null;
      /** Length of its cable to the last point, in metres. */
      length_m?: Fact | null;
      /** Its protective device; left out when the engine may choose. */
      device?: Device | null;
      /** Length of a ring circuit's cable all the way round, in metres; twice length_m when left out. */
      loop_length_m?: Fact | null;
      /** How its cable lies; clipped when left out. */
      method?: "clipped" | "tray" | "free air" | "in conduit" | "in trunking" | "in insulation" | "above ceiling" | "buried direct" | "buried in duct" | "overhead" | null;
      /** True when the load stays on for hours. */
      continuous?: boolean | null;
      /** Starting current of a motor as a multiple of its running current. */
      starting_multiple?: Fact | null;
      /** How often a motor starts in an hour. */
      starts_per_hour?: Fact | null;
      /** Share of ten minutes that a welder is at work, in per cent. */
      duty_percent?: Fact | null;
      /** True when the load is fed through a variable-speed drive or an inverter. */
      drive?: boolean | null;
      /** Current that its equipment sends down the protective conductor all the time, in milliamperes. */
      leakage_ma?: Fact | null;
      /** Third-harmonic current as a share of the line current, in per cent. */
      third_harmonic_percent?: Fact | null;
      /** True for a circuit that is not there today and is planned for later. */
      later?: boolean | null;
      /** Of a battery or solar circuit: what it goes on feeding when the mains fails. nothing, the building it stands in, or the house too. */
      keeps_supply?: "nothing" | "building" | "house" | null;
      /** The cable it has or is to have; left out when the engine may choose. */
      cable?: {
        /** Family of the cable. */
        family: "armoured XLPE copper" | "armoured PVC copper" | "armoured XLPE aluminium" | "flat twin and earth" | "unarmoured XLPE copper" | "unarmoured PVC copper";
        /** Section of line and neutral, in square millimetres. */
        live_mm2: number;
        /** Section of the protective conductor, in square millimetres. */
        cpc_mm2?: number | null;
      } | null;
    }> | null;
    /** Number of ways to keep free on the building's board. */
    spare_ways?: Fact | null;
    /** Load of the whole building, in amperes; not beside load_w. */
    load_a?: Fact | null;
    /** Load of the whole building, in watts; not beside load_a. */
    load_w?: Fact | null;
    /** Power factor of the building's load. */
    power_factor?: Fact | null;
    /** Energy that the building uses in a year, in kilowatt-hours: what its cable loses over the years follows from it. */
    energy_kwh_year?: Fact | null;
    /** Load to allow for later, in amperes. */
    future_load_a?: Fact | null;
    /** True when animals are kept in the building. */
    livestock?: boolean | null;
    /** True when the floor is wet in use. */
    wet_floor?: boolean | null;
    /** True when people are barefoot or wet there. */
    barefoot?: boolean | null;
    /** True when a vehicle is charged outdoors there. */
    vehicle_outdoors?: boolean | null;
    /** What was found wrong there, at the house or the outbuilding. */
    found?: Array<"rod joined to supply earth" | "armour earthed at both ends" | "no RCD on a TT board" | "main bonding too small" | "neutral and earth joined" | "borrowed neutral" | "no earth" | "live parts within reach"> | null;
    /** True when fire would find much to burn, such as hay, dust or thatch. */
    spread_of_fire_risk?: boolean | null;
  }>;
  /** The supplies from building to building. Each building but the house is fed by one run, from the house or from another building that is fed. A building with more than one run to it: one of them is built, and the search chooses which. */
  runs: Array<{
    /** Name of the run; no two alike. */
    id: string;
    /** Id of the building that feeds: the house, or one that a run feeds. */
    from: string;
    /** Id of the building that is fed; not the house. */
    to: string;
    /** The stretches of the route in order from the feeding end. */
    legs: Array<{
      /** How the cable is laid. */
      method: "clipped" | "tray" | "free air" | "in conduit" | "in trunking" | "in insulation" | "above ceiling" | "buried direct" | "buried in duct" | "overhead";
      /** Length of the leg, in metres. */
      length_m: Fact;
      /** Temperature of the air around the leg in the warmest season, in degrees Celsius. */
      ambient_c?: Fact | null;
      /** Number of other loaded circuits that touch the cable; left out in a shared trench, the other runs built there. */
      other_loaded_circuits?: Fact | null;
      /** Depth of a buried leg, in metres. */
      depth_m?: Fact | null;
      /** What lies above a buried leg. */
      surface?: "lawn" | "bed" | "path" | "drive" | "patio" | "field" | "shared path" | "road" | null;
      /** Length of the leg that lies within thermal insulation, in metres. */
      insulation_length_m?: Fact | null;
      /** Family of the cable on this leg; left out when the engine may choose. Legs in a row that say the same share one cable; the cable may change three times. */
      family?: "armoured XLPE copper" | "armoured PVC copper" | "armoured XLPE aluminium" | "flat twin and earth" | "unarmoured XLPE copper" | "unarmoured PVC copper" | null;
      /** Cores of that cable; only with the family. */
      cores?: number | null;
      /** Section of each live core of that cable, in square millimetres; only with the family, and one that is tabulated. */
      live_mm2?: number | null;
      /** Name of the trench that a buried leg shares with legs of other runs. It is dug once, for the longest of them that is built; the cables in it count as neighbours where other_loaded_circuits is left out. A run lies once in a trench, and its surface is the same for all. */
      trench?: string | null;
      /** True when the leg is under a roof, out of sun and wet. */
      indoors?: boolean | null;
      /** True when the cable is in a wall or partition, less than 50 mm deep. */
      concealed?: boolean | null;
      /** Height of an overhead leg over what it crosses, in metres. */
      height_m?: Fact | null;
      /** Where the leg passes, for the picture of the place, in order from the feeding end; the last is where it ends. No calculation reads it: length_m says how long it is. */
      through_m?: [number, number][] | null;
    }>;
    /** What is to go the run's way besides the supply; the answer says what it asks for. */
    also_carries?: Array<"two-way lighting" | "switching" | "alarm" | "telephone" | "data"> | null;
    /** Where a run from the house begins there; left out when the engine may choose. A run from another building begins at a way of its board. */
    fed_from?: "spare way" | "tails" | "new board" | null;
    /** Phases taken to the building, 1 or 3; left out for what its circuits need, or for either where nothing tells. In a job of several runs, left out: 3 where a circuit or a run behind it needs three, else 1. */
    phases?: number | null;
    /** The device at its head, one that is tabulated; left out when the engine may choose. */
    device?: Device | null;
    /** What was found wrong with the cable that is there. */
    found?: Array<"cable near the surface" | "flat cable in the ground" | "joint in the ground"> | null;
    /** The cable that lies there already, the whole way. It may stay, be doubled or be replaced. */
    existing?: {
      /** Family of the cable. */
      family: "armoured XLPE copper" | "armoured PVC copper" | "armoured XLPE aluminium" | "flat twin and earth" | "unarmoured XLPE copper" | "unarmoured PVC copper";
      /** Its cores; flat twin and earth counts two. */
      cores: number;
      /** Section of each live core, in square millimetres; one that is tabulated. */
      live_mm2: number;
      /** Section of its protective core, in square millimetres; only the one that is tabulated can be judged. */
      cpc_mm2?: number | null;
      /** The device that feeds it today, one that is tabulated; it may stay. */
      device?: Device | null;
      /** Where it is fed from today. */
      fed_from?: "spare way" | "tails" | "new board" | null;
      /** How it was found by somebody who looked: damaged excludes it, not seen is asked for. */
      condition?: "sound" | "damaged" | "not seen" | null;
      /** Colours of its cores. */
      colours?: "brown and blue" | "red and black" | null;
      /** Year in which it was laid. */
      laid_in?: number | null;
      /** Insulation between any two of its conductors, the least reading, in megohms. */
      insulation_megohm?: Fact | null;
      /** Line and protective conductor joined at the far end, read at the near end, in ohms. */
      r1_r2_ohm?: Fact | null;
      /** What that reading went back through; left out: all it may have. */
      read_through?: "armour" | "core" | "core and armour" | null;
      /** Line and neutral joined at the far end, read at the near end, in ohms. */
      r1_rn_ohm?: Fact | null;
      /** Earth fault loop read at the far end, in ohms. */
      zs_ohm?: Fact | null;
      /** Armour from end to end, in ohms. */
      armour_ohm?: Fact | null;
    } | null;
  }>;
  /** What the user asks for beyond the rules. */
  wishes?: {
    /** Largest voltage drop, in per cent of the nominal voltage. */
    max_voltage_drop_percent?: {
      /** Over the run alone, in per cent. */
      run?: Fact | null;
      /** From the origin to the last lamp, in per cent. */
      lighting_total?: Fact | null;
      /** From the origin to any other load, in per cent. */
      other_total?: Fact | null;
    } | null;
    /** Families of cable to choose from; all when left out or empty. */
    offer?: Array<"armoured XLPE copper" | "armoured PVC copper" | "armoured XLPE aluminium" | "flat twin and earth" | "unarmoured XLPE copper" | "unarmoured PVC copper"> | null;
    /** Standards of the devices to choose from; all when left out or empty. */
    devices?: Array<"BS 88-2" | "BS 88-3" | "BS 1361" | "BS 3036" | "BS EN 60898" | "BS EN 61009" | "BS EN 60947-2"> | null;
    /** Smallest section of a core to offer, in square millimetres. */
    smallest_core_mm2?: Fact | null;
    /** Load that the run is sized for: what is there today with diversity, with what is planned for later too, or every circuit at its full load at once; likely when left out. */
    scenario?: "today" | "likely" | "everything" | null;
    /** Greatest part of its voltage that a starting motor may take, in per cent. */
    max_starting_dip_percent?: Fact | null;
    /** What schemes are ranked by; price when left out. */
    prefer?: "price" | "headroom" | "dependability" | null;
  } | null;
  /** Test readings of any form; kept, not judged. */
  readings?: Record<string, unknown>[] | null;
}

export type Building = Job["buildings"][number];
export type Run = Job["runs"][number];
export type Leg = Run["legs"][number];
export type Intake = Job["intake"];
export type Ground = NonNullable<Job["ground"]>;
export type Metalwork = NonNullable<Building["metalwork"]>[number];
export type Circuit = NonNullable<Building["circuits"]>[number];
export type Electrode = NonNullable<Building["electrode"]>;
