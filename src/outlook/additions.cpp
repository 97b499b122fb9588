#include "demand/scenario.h"
#include "outlook/later.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::outlook {

namespace {

template <class Q>
site::Fact<Q> planned(Q value) {
    return {true, value, value, site::Standing::declared, site::Spread::even};
}

/// A figure for the whole building grows by the addition. On three lines a single-phase load is
/// counted as if each line had it, for it is on one of them.
void raise_figure(const site::Job& job, site::Building& b, double watts) {
    if (b.load.known) {
        const Amperes more = amperes(watts / job.intake.u0.number());
        b.load.low = b.load.low + more;
        b.load.high = b.load.high + more;
        return;
    }
    const double lines = job.intake.phases == 3 && job.runs[0].phases.value_or(3) == 3 ? 3 : 1;
    b.load_w.low += lines * watts;
    b.load_w.high += lines * watts;
}

/// A timber building without metal behind the board of the first.
void add_building(site::Job& job, const tables::AdditionRow& row) {
    site::Building far;
    far.id = "later-building";
    far.name = "Later building";
    far.construction = site::Construction::timber;
    far.stands_in_ground = site::Answer::no;
    far.metalwork_surveyed = true;
    far.reach_of_house_earth = planned(metres(row.length_m));
    far.load_w = planned(row.load_w);
    site::Leg leg;
    leg.method = site::LegMethod::buried_direct;
    leg.length = planned(metres(row.length_m));
    site::Run run;
    run.id = "later-run";
    run.from = job.runs[0].to;
    run.to = far.id;
    run.legs = {leg};
    job.buildings.push_back(std::move(far));
    job.runs.push_back(std::move(run));
}

}  // namespace

site::Job with_addition(const tables::Catalogue& catalogue, const site::Job& job,
                        const tables::AdditionRow& row) {
    site::Job with = job;
    if (row.form == "building") {
        add_building(with, row);
        return with;
    }
    const auto& kinds = site::words<site::CircuitKind>();
    const auto place = std::find(kinds.begin(), kinds.end(), row.form);
    const auto kind = static_cast<site::CircuitKind>(place - kinds.begin());
    site::Building& b = with.buildings[site::building_index(with, with.runs[0].to)];
    const bool by_figure = demand::load_is_stated(b) && !demand::by_circuits(b);
    if (by_figure && b.circuits.empty() && !with.wishes.drop_run.known) {
        // One planned circuit does not make a plan of all: the run keeps the share it had.
        with.wishes.drop_run = planned(catalogue.limits.drop_run.value);
    }
    site::Circuit circuit;
    circuit.name = row.says;
    circuit.kind = kind;
    circuit.load_w = planned(row.load_w);
    circuit.length = planned(metres(row.length_m));
    const bool draws = kind != site::CircuitKind::solar;
    if (by_figure && draws) raise_figure(with, b, row.load_w);
    if (kind == site::CircuitKind::vehicle_charging) b.vehicle_outdoors = site::Answer::yes;
    b.circuits.push_back(std::move(circuit));
    return with;
}

}  // namespace toft::outlook
