import { Field } from "../../fact/Field";
import { say } from "../../words";
import { EarthingField } from "./Earthing";
import { More } from "./More";
import { get } from "../../bench";

const few = ["ze_ohm", "service_fuse", "demand_a", "board/spare_ways"];
const supply = [
  "phases", "looped", "pscc_ka", "pefc_ka", "line_neutral_loop_ohm", "ze_declared_ohm", "supply_neutral_mm2",
  "agreed_demand_a", "u0_v",
];
const earth = ["earthing_conductor_mm2", "main_bonding_mm2", "earth_without_neutral_ohm"];
const board = [
  "tails_mm2", "tails_m", "isolator", "main_switch_a", "board/max_device_a", "board/takes", "board/breaking_ka",
  "board/behind_rcd_ma", "board/rcd_type", "board/rcd_delayed",
];
const ground = ["soil", "resistivity_ohm_m", "read_when", "temperature_c", "thermal_resistivity_k_m_per_w"];
const wishes = [
  "prefer", "scenario", "max_voltage_drop_percent/run", "max_voltage_drop_percent/lighting_total",
  "max_voltage_drop_percent/other_total", "smallest_core_mm2", "offer",
];

const at = (room: string, keys: string[]) => keys.map((key) => `/${room}/${key}`);

export function HouseFacts() {
  const tt = get("/intake/earthing") === "TT";
  return (
    <>
      <EarthingField />
      {at("intake", few).map((pointer) => <Field key={pointer} pointer={pointer} />)}
      <More title={say("place.more_supply")} facts={at("intake", supply)} />
      <More title={say("place.more_earth")} facts={at("intake", tt ? ["electrode_ohm", ...earth] : earth)} />
      <More title={say("place.more_board")} facts={at("intake", board)} />
      <More title={say("place.more_ground")} facts={at("ground", ground)} />
      <More title={say("place.more_wishes")} facts={["/title", ...at("wishes", wishes)]} />
    </>
  );
}
