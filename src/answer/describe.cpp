#include "answer/describe.h"

#include "base/text.h"

#include <fmt/format.h>

namespace toft::answer {

namespace {

std::string mm2(double section) { return significant(section, 6) + " mm²"; }

std::string device_words(const RunAnswer& run) {
    const std::string rating = significant(run.device.rating_a, 6);
    if (run.device.curve.empty()) {
        return fmt::format("a {} A {} fuse", rating, run.device.standard);
    }
    return fmt::format("a {} A type {} breaker ({} kA)", rating, run.device.curve,
                       significant(run.device.breaking_capacity_ka, 4));
}

std::string place_words(const std::string& fed_from) {
    if (fed_from == "tails") return "in a switch-fuse on the tails";
    if (fed_from == "new board") return "in a new small board on the tails";
    return "in a spare way of the house's board";
}

std::string protective_words(const SchemeAnswer& s) {
    const RunAnswer& run = s.run;
    if (s.building.earthing == "own electrode") {
        return "give the building its own earth rod; earth the armour at the house only and "
               "insulate "
               "it at the far end";
    }
    const std::string whose =
        s.building.earthing == "shared electrode" ? "the house's electrode" : "the house's earth";
    std::string by = "through the " + run.protective_conductor;
    if (run.separate_mm2) by += fmt::format(" ({} copper)", mm2(*run.separate_mm2));
    return fmt::format("carry {} out {}", whose, by);
}

std::string joined(const std::vector<BondAnswer>& bonds) {
    std::string text;
    for (std::size_t i = 0; i < bonds.size(); ++i) {
        if (i > 0) text += i + 1 == bonds.size() ? " and the " : ", the ";
        text += bonds[i].part;
    }
    return text;
}

bool has_part(const study::Setting<Silent>& setting, site::Metal what) {
    for (const study::MetalPart& part : setting.building.parts) {
        if (part.name == site::word(what)) return true;
    }
    return false;
}

void tell_operator(const Question& q, const study::Setting<Silent>& setting, SchemeAnswer& s) {
    const site::Intake& in = q.job.intake;
    const double ib = setting.ib.number();
    if (in.looped != site::Answer::no) {
        s.tell.push_back({"network operator", "before",
                          in.looped == site::Answer::yes
                              ? "the supply is looped with a neighbour's"
                              : "ask whether the supply is looped with a neighbour's"});
    }
    if (!in.demand.known || !in.service_fuse) {
        s.tell.push_back(
            {"network operator", "before",
             fmt::format("whether the intake can spare {} A more is not known: measure the "
                         "house's demand and read the fuse",
                         significant(ib, 3))});
    } else if (in.demand.high.number() + ib > in.service_fuse->rating.number()) {
        s.tell.push_back({"network operator", "before",
                          fmt::format("house {} A and run {} A together exceed the {} A fuse",
                                      significant(in.demand.high.number(), 3), significant(ib, 3),
                                      significant(in.service_fuse->rating.number(), 3))});
    }
    if (s.building.earthing == "supply earth") {
        s.tell.push_back({"network operator", "before",
                          "ask whether their earth may be taken to another building"});
    }
}

}  // namespace

std::string sentence_of(const SchemeAnswer& s) {
    const RunAnswer& run = s.run;
    std::string text = fmt::format("Feed it with {}-core {} armoured cable from {} {}", run.cores,
                                   mm2(run.live_mm2), device_words(run), place_words(run.fed_from));
    if (run.rcd) {
        text +=
            fmt::format(", behind a delayed {} mA RCD", significant(run.rcd->sensitivity_ma, 4));
    }
    text += "; " + protective_words(s);
    if (!s.building.bonding.empty()) {
        text += fmt::format("; bond the {} there with {} copper", joined(s.building.bonding),
                            mm2(s.building.bonding.front().size_mm2));
    }
    return text + ".";
}

std::string short_words(const SchemeAnswer& s) {
    const RunAnswer& run = s.run;
    std::string text =
        fmt::format("{}-core {}, {}", run.cores, mm2(run.live_mm2), run.protective_conductor);
    if (run.separate_mm2) text += " " + mm2(*run.separate_mm2);
    text += ", " + s.building.earthing + ", " + significant(run.device.rating_a, 6) + " A ";
    text += run.device.curve.empty() ? "fuse"
                                     : fmt::format("type {} breaker {} kA", run.device.curve,
                                                   significant(run.device.breaking_capacity_ka, 4));
    text += ", " + run.fed_from;
    if (run.rcd)
        text += fmt::format(", {} mA delayed RCD", significant(run.rcd->sensitivity_ma, 4));
    return text;
}

std::string nearest_sentence(const search::Dropped& dropped) {
    if (!dropped.nearest) return "";
    return fmt::format("{} misses by {} %", study::scheme_key(*dropped.nearest),
                       significant((dropped.nearest_use - 1) * 100, 2));
}

std::vector<std::string> standing_cautions() {
    return {
        "Electricity kills. A competent, licensed person designs, does and tests this work; this "
        "answer is a calculation, not a permission.",
        "The local code and the network operator decide. Figures are those of BS 7671:2018 up to "
        "Amendment 3; Amendment 4:2026 governs since 15 October 2026 and its tables were not seen.",
        "Measure Ze and the fault current, prove the earthing type and isolate before any of it is "
        "built; test every figure after.",
        "Price from an invented book: it shows which scheme is dearer, not what you will pay.",
    };
}

void add_duties(const Question& q, const study::Setting<Silent>& setting, SchemeAnswer& s) {
    tell_operator(q, setting, s);
    s.tell.push_back({"building control, or the registration scheme", "after",
                      "a new circuit is notifiable work in most places; rules differ by country"});
    for (const FindingAnswer& f : s.findings) {
        if (f.verdict == rules::Verdict::caution) s.cautions.push_back(f.says);
    }
    if (setting.supply.system != site::Earthing::tt && s.building.earthing == "own electrode") {
        s.cautions.push_back(
            "Label the building: its earth is its own; the armour must not be joined "
            "to it, and nothing on the house's earth brought within reach.");
    }
    if (s.building.electrode && !s.building.electrode->measured) {
        s.cautions.push_back("The electrode is predicted from the soil; only a test proves it.");
    }
    const site::Use use = setting.building_facts->use.value_or(site::Use::other);
    if (use == site::Use::hot_tub || use == site::Use::pool_house ||
        use == site::Use::caravan_pitch || use == site::Use::boat_mooring ||
        use == site::Use::animal_house || use == site::Use::stable) {
        s.needs_a_person.push_back(
            fmt::format("{}: special rules apply that are not judged here", site::word(use)));
    }
    if (has_part(setting, site::Metal::lightning_rod)) {
        s.needs_a_person.push_back("lightning protection: its bonding needs its designer");
    }
    s.needs_a_person.push_back("a competent, licensed person signs the design and the tests");
}

}  // namespace toft::answer
