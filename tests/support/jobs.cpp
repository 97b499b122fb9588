#include "support/jobs.h"

#include "support/catalogue.h"

#include <algorithm>

namespace toft::support {

namespace {

site::Intake plain_intake() {
    site::Intake in;
    in.earthing = site::Earthing::tn_c_s;
    in.ze = measured(ohms(0.2));
    in.line_neutral_loop = measured(ohms(0.2));
    in.service_fuse = site::NamedDevice{"BS 88-3", "", amperes(100)};
    in.supply_neutral = measured(square_millimetres(25));
    in.earthing_conductor = measured(square_millimetres(16));
    in.main_bonding = measured(square_millimetres(10));
    in.tails_length = measured(metres(2));
    in.demand = measured(amperes(20));
    in.board.spare_ways = measured(3.0);
    in.board.max_device = measured(amperes(63));
    in.board.behind_rcd = measured(amperes(0));
    return in;
}

site::Ground plain_ground() {
    site::Ground ground;
    ground.soil = "clay";
    ground.read_when = site::Season::dry;
    ground.resistivity = measured(ohm_metres(50));
    ground.thermal_resistivity = measured(1.5);
    ground.temperature = measured(celsius(15));
    return ground;
}

}  // namespace

site::Leg plain_leg(site::LegMethod method, double length_m) {
    site::Leg leg;
    leg.method = method;
    leg.length = measured(metres(length_m));
    leg.ambient = measured(celsius(20));
    leg.other_loaded_circuits = measured(0.0);
    leg.depth = measured(metres(0.6));
    if (site::buried(method)) leg.surface = site::Surface::lawn;
    leg.indoors = site::Answer::no;
    leg.concealed = site::Answer::no;
    leg.height = measured(metres(6));
    return leg;
}

site::Job job_with_legs(std::vector<site::Leg> legs) {
    site::Building house;
    house.id = "house";
    house.origin = true;
    site::Building shed;
    shed.id = "shed";
    shed.use = site::Use::shed;
    shed.construction = site::Construction::timber;
    shed.metalwork_surveyed = true;
    for (site::Answer* answer :
         {&shed.stands_in_ground, &shed.livestock, &shed.wet_floor, &shed.barefoot,
          &shed.vehicle_outdoors, &shed.spread_of_fire_risk}) {
        *answer = site::Answer::no;
    }
    shed.reach_of_house_earth = measured(metres(20));
    shed.load = measured(amperes(20));
    shed.power_factor = measured(1.0);
    shed.electrode.rods = measured(1.0);
    shed.electrode.length = measured(metres(2.4));
    shed.electrode.diameter = measured(millimetres(14.2));
    shed.electrode.from_house_earth = measured(metres(20));
    site::Run run;
    run.id = "run";
    run.from = "house";
    run.to = "shed";
    run.legs = std::move(legs);
    site::Job job;
    job.title = "plain";
    job.intake = plain_intake();
    job.ground = plain_ground();
    job.buildings = {house, shed};
    job.runs = {run};
    return job;
}

site::Job plain_job() { return job_with_legs({plain_leg(site::LegMethod::buried_direct)}); }

study::RunScheme scheme(const tables::Cable& cable, study::Protective protective,
                        const tables::Device& device) {
    return scheme({stretch(cable, protective)}, device);
}

study::Stretch stretch(const tables::Cable& cable, study::Protective protective, int parallel) {
    return {&cable, protective, nullptr, parallel};
}

study::RunScheme scheme(const std::vector<study::Stretch>& stretches,
                        const tables::Device& device) {
    study::RunScheme s;
    s.stretches = stretches.size();
    std::copy(stretches.begin(), stretches.end(), s.stretch.begin());
    s.device = &device;
    return s;
}

void name_cable(site::Leg& leg, const tables::Cable& cable) {
    leg.family = tables::family_word(cable.family);
    leg.cores = cable.cores;
}

site::Job on_three_phases(site::Job job) {
    job.intake.phases = 3;
    job.runs[0].phases = 3;
    return job;
}

site::Job all_said(site::Job job) {
    site::Intake& in = job.intake;
    if (!in.demand.known) in.demand = measured(amperes(20));
    if (in.earthing == site::Earthing::tt && !in.electrode.known && !in.ze.known) {
        in.electrode = measured(ohms(60));
    }
    for (site::Run& run : job.runs) {
        for (site::Leg& leg : run.legs) {
            if (!leg.depth.known) leg.depth = measured(metres(0.6));
        }
    }
    return job;
}

study::Setting<Silent> prepared(const site::Job& job, const study::Corner& corner) {
    Silent ledger;
    return study::prepare(ledger, catalogue(), job, 0, corner);
}

}  // namespace toft::support
