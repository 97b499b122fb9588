#include "paper/plain_words.h"

#include "base/text.h"
#include "paper/block_words.h"
#include "study/scheme.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::paper {

namespace {

using answer::RunAnswer;
using answer::SchemeAnswer;
using answer::StretchAnswer;

std::string plain_number(double x) { return significant(x, 6); }

bool becomes(const StretchAnswer& s, study::Laid laid) { return s.laid == study::laid_word(laid); }

std::string cable_plain(const StretchAnswer& s) {
    std::string kind = s.armoured                          ? "armoured cable"
                       : s.family == "flat twin and earth" ? "flat house cable"
                                                           : "round cable without armour";
    if (s.parallel > 1) kind = "two of " + kind + " side by side";
    if (becomes(s, study::Laid::kept)) kind = "the " + kind + " that is there already";
    if (becomes(s, study::Laid::doubled)) kind += ", one of them there already";
    if (becomes(s, study::Laid::anew)) kind += " in place of the one that is there";
    return fmt::format("{} with wires of {} mm²", kind, plain_number(s.live_mm2));
}

std::string cables_plain(const RunAnswer& run) {
    std::vector<std::string> all;
    for (const StretchAnswer& s : run.stretches) {
        std::string words = cable_plain(s);
        if (std::find(all.begin(), all.end(), words) == all.end()) all.push_back(std::move(words));
    }
    std::string text;
    for (const std::string& words : all) text += (text.empty() ? "" : "; ") + words;
    return text;
}

std::string path_plain(const std::string& protective) {
    if (protective == "armour") return "the steel armour of the cable and its fittings";
    if (protective == "core") return "a copper wire in the cable";
    if (protective == "core and armour")
        return "two paths: a copper wire in the cable, and its steel armour";
    if (protective == "separate conductor") return "a copper wire beside the cable";
    if (protective == "armour and separate conductor") {
        return "two paths: the steel armour of the cable, and a copper wire beside it";
    }
    return "the " + protective;
}

std::string paths_plain(const RunAnswer& run) {
    std::vector<std::string> all;
    for (const StretchAnswer& s : run.stretches) {
        std::string path = path_plain(s.protective_conductor);
        if (std::find(all.begin(), all.end(), path) == all.end()) all.push_back(std::move(path));
    }
    std::string text;
    for (const std::string& path : all) text += (text.empty() ? "" : ", then ") + path;
    return text;
}

std::string whose_plain(const RunAnswer& run) {
    return run.feeder.empty() ? "the house's" : "that of " + run.feeder;
}

/// What carries the earth out, over all stretches.
std::string carrier(const RunAnswer& run) {
    bool cable = false;
    bool beside = false;
    for (const StretchAnswer& s : run.stretches) {
        beside = beside || s.separate_mm2.has_value();
        cable = cable || s.protective_conductor != "separate conductor";
    }
    if (!beside) return "the cable";
    return cable ? "the cable and a wire beside it" : "a wire beside the cable";
}

bool is_source(const site::Circuit& c) {
    return c.kind == site::CircuitKind::solar || c.kind == site::CircuitKind::battery;
}

void add_sources(const Subject& s, const std::string& id, std::vector<std::string>& names) {
    const site::Building* building = site::find_building(s.job, id);
    if (!building) return;
    for (const site::Circuit& c : building->circuits) {
        if (!is_source(c)) continue;
        const std::string what = c.name.empty() ? site::word(c.kind) : c.name;
        names.push_back(fmt::format("{} in {}", what, building_name(s, id)));
    }
    for (const SchemeAnswer* part : runs_of(s)) {
        if (run_of(s, *part).from == id) add_sources(s, part->building.id, names);
    }
}

}  // namespace

Subject with_scheme(const Subject& s, std::size_t scheme) {
    return {s.catalogue, s.job, s.answer, scheme, s.date};
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) text += i + 1 == names.size() ? " and " : ", ";
        text += names[i];
    }
    return text;
}

std::string device_plain(const RunAnswer& run) {
    const answer::DeviceAnswer& d = run.device;
    const std::string rating = plain_number(d.rating_a) + " amp ";
    if (d.curve.empty())
        return run.phases == 3 ? "three " + rating + "fuses" : "a " + rating + "fuse";
    const std::string one = (run.phases == 3 ? "a three-phase " : "a ") + rating + "breaker";
    if (run.rcd) return one + " that also cuts off leaks to earth";
    return one;
}

std::string place_plain(const RunAnswer& run) {
    if (!run.feeder.empty()) return "in the board of " + run.feeder;
    if (run.fed_from == "tails") return "in a box of its own beside the meter";
    if (run.fed_from == "new board") return "in a new small board beside the meter";
    return "in the house's board";
}

std::string feeder_name(const RunAnswer& run) {
    return run.feeder.empty() ? "the house" : run.feeder;
}

std::string sentence_plain(const SchemeAnswer& part) {
    const RunAnswer& run = part.run;
    std::string text = fmt::format("{}, from {} {}", capital(cables_plain(run)), device_plain(run),
                                   place_plain(run));
    if (run.device_stays) text += ", which is there already";
    const std::string& earthing = part.building.earthing;
    if (earthing == "own electrode") {
        const auto& rods = part.building.electrode;
        const int count = rods ? rods->rods : 1;
        text += count > 1 ? fmt::format("; {} earth rods of its own", count)
                          : std::string("; an earth rod of its own");
    } else {
        text += fmt::format("; its earth is {}, brought by {}", whose_plain(run), carrier(run));
    }
    std::vector<std::string> bonded;
    for (const answer::BondAnswer& bond : part.building.bonding) bonded.push_back(part_name(bond));
    if (!bonded.empty()) text += fmt::format("; the {} tied to it", listed(bonded));
    return text + ".";
}

std::string rests_on(const SchemeAnswer& part) {
    const std::string& earthing = part.building.earthing;
    if (earthing == "own electrode") {
        return "the earth rod, and the devices with a test button that cut off leaks: both must be "
               "kept in order";
    }
    const std::string earth = earthing == "shared electrode"
                                  ? "an earth rod elsewhere, the devices with a test button, and "
                                  : "the earth that the network brings, and ";
    return earth + paths_plain(part.run);
}

std::string limit_plain(const std::string& governed_by) {
    const std::size_t of = governed_by.find(" of ");
    const std::string rule = governed_by.substr(0, of);
    const std::string run = of == std::string::npos ? "" : governed_by.substr(of + 4);
    std::string words = rule;
    std::replace(words.begin(), words.end(), '-', ' ');
    if (rule == "overload") words = "the load on the breaker or fuse";
    if (rule == "current-rating") words = "the current that the cable can carry";
    if (rule == "voltage-drop") words = "the voltage lost along the cable";
    if (rule == "disconnection") words = "how fast a fault is cut off";
    if (rule == "fault-heat") words = "the heat of a fault in the cable";
    return run.empty() ? words : words + ", " + run;
}

std::vector<std::string> sources_behind(const Subject& s, const std::string& building) {
    std::vector<std::string> names;
    add_sources(s, building, names);
    return names;
}

std::vector<std::string> situations_of(const Subject& s, const SchemeAnswer& part) {
    std::vector<std::string> all{"always"};
    const std::string& earthing = part.building.earthing;
    if (earthing == "supply earth") {
        all.push_back(s.job.intake.earthing == site::Earthing::tn_c_s ? "combined earth"
                                                                      : "separate earth");
    } else {
        all.push_back(earthing);
    }
    if (!part.building.bonding.empty()) all.push_back("bonded");
    all.push_back(part.run.device.curve.empty() ? "fuse" : "breaker");
    if (part.run.rcd || !part.building.rcds.empty()) all.push_back("residual");
    const std::vector<site::Leg>& legs = run_of(s, part).legs;
    if (std::any_of(legs.begin(), legs.end(),
                    [](const site::Leg& leg) { return site::buried(leg.method); })) {
        all.push_back("buried");
    }
    if (!sources_behind(s, part.building.id).empty()) all.push_back("sources");
    if (s.job.intake.u0.number() > s.catalogue.handover.terms.voltage_notice.value) {
        all.push_back("high voltage");
    }
    return all;
}

std::string filled(std::string words, const Fillings& fillings) {
    std::string text;
    for (std::size_t at = 0; at < words.size();) {
        const auto found = std::find_if(fillings.begin(), fillings.end(), [&](const auto& one) {
            return words.compare(at, one.first.size() + 2, "{" + one.first + "}") == 0;
        });
        if (found == fillings.end()) {
            text += words[at++];
        } else {
            text += found->second;
            at += found->first.size() + 2;
        }
    }
    return text;
}

Fillings plain_fillings(const Subject& s, const SchemeAnswer& part) {
    return {{"building", building_name(s, part.building.id)},
            {"feeder", feeder_name(part.run)},
            {"device", device_plain(part.run)},
            {"months", plain_number(s.catalogue.handover.terms.test_months.value)}};
}

std::vector<std::string> notices_for(const Subject& s, const std::string& list,
                                     const std::vector<const SchemeAnswer*>& parts) {
    std::vector<std::string> all;
    for (const tables::Notice& notice : s.catalogue.handover.notices) {
        if (notice.list != list) continue;
        for (const SchemeAnswer* part : parts) {
            const auto holds = situations_of(s, *part);
            if (std::find(holds.begin(), holds.end(), notice.when) == holds.end()) continue;
            std::string words = filled(notice.says, plain_fillings(s, *part));
            if (std::find(all.begin(), all.end(), words) == all.end()) all.push_back(words);
            break;
        }
    }
    return all;
}

page::Table words_used(const Subject& s, const std::vector<page::Block>& blocks) {
    std::string text;
    for (const page::Block& block : blocks) text += words_of(block) + "\n";
    page::Table table{{{"", 1.5}, {"", 4}, {"", 1.5}, {"", 4}}, {}};
    for (const tables::TradeWord& word : s.catalogue.handover.words) {
        if (!holds_word(text, word.word)) continue;
        if (table.rows.empty() || table.rows.back().cells.size() == 4) table.rows.push_back({});
        table.rows.back().cells.push_back(word.word);
        table.rows.back().cells.push_back(word.means);
    }
    return table;
}

}  // namespace toft::paper
