#include "codec/job_parts.h"

namespace toft::codec {

namespace {

site::Leg read_leg(Reader& in) {
    site::Leg leg;
    if (const auto method = in.word<site::LegMethod>("method", true)) leg.method = *method;
    leg.length = in.fact<Metres>("length_m", {0.05, 5000});
    if (!in.has("length_m")) {
        in.fault("missing", "length_m", "every leg needs its length in metres");
    }
    leg.ambient = in.fact<Celsius>("ambient_c", {-10, 60});
    leg.other_loaded_circuits = in.fact<double>("other_loaded_circuits", {0, 5, true});
    leg.depth = in.fact<Metres>("depth_m", {0.05, 3});
    leg.surface = in.word<site::Surface>("surface");
    leg.insulation_length = in.fact<Metres>("insulation_length_m", {0, 5000});
    in.listed("family", offered_families());
    in.finish();
    return leg;
}

site::Run read_run(Reader& in) {
    site::Run run;
    run.id = in.text("id", true);
    run.from = in.text("from", true);
    run.to = in.text("to", true);
    for (Reader& leg : in.objects("legs", 50)) run.legs.push_back(read_leg(leg));
    run.fed_from = in.word<site::FedFrom>("fed_from");
    if (in.takes("existing")) {
        in.fault("not-supported", "existing",
                 "existing cables are not judged by this version; leave the key out to plan a new "
                 "one");
    }
    in.finish();
    return run;
}

}  // namespace

const std::vector<std::string>& offered_families() {
    static const std::vector<std::string> families{
        tables::family_word(tables::Family::armoured_xlpe_copper)};
    return families;
}

void read_runs(Reader& in, site::Job& job) {
    for (Reader& run : in.objects("runs", 200)) job.runs.push_back(read_run(run));
}

void read_wishes(Reader& in, site::Job& job) {
    site::Wishes& wishes = job.wishes;
    if (auto drop = in.object("max_voltage_drop_percent")) {
        wishes.drop_run = drop->fact<double>("run", {0.1, 10});
        wishes.drop_lighting = drop->fact<double>("lighting_total", {0.1, 10});
        wishes.drop_other = drop->fact<double>("other_total", {0.1, 10});
        drop->finish();
    }
    wishes.offer = in.list_of("offer", offered_families());
    wishes.smallest_core = in.fact<SquareMillimetres>("smallest_core_mm2", {1, 95});
    if (const auto prefer = in.word<site::Prefer>("prefer")) wishes.prefer = *prefer;
    in.finish();
}

}  // namespace toft::codec
