#include "answer/outline.h"

#include "answer/circuits.h"
#include "answer/describe.h"
#include "earthing/main_bonding.h"
#include "study/path_load.h"
#include "tree/order.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace toft::answer {

namespace {

const StretchAnswer& longest(const std::vector<StretchAnswer>& stretches) {
    return *std::max_element(
        stretches.begin(), stretches.end(),
        [](const StretchAnswer& a, const StretchAnswer& b) { return a.length_m < b.length_m; });
}

/// Of more than these runs it is only said which they are.
constexpr std::size_t most_told = 3;
constexpr std::size_t most_named = 4;

std::string name_of(const site::Building& building) {
    return building.name.empty() ? building.id : building.name;
}

/// The run at that place of the tree's order as the solution builds it.
std::string told(const Question& q, const solve::Solution& solution, std::size_t run,
                 std::size_t place) {
    Silent silent;
    const study::RunScheme& scheme = solution.schemes[place];
    const auto setting =
        study::prepare(silent, q.catalogue, q.job, study::RunAt{run, scheme.phases, q.memo}, {});
    return end_of_run(q.job, run) + ": " + brief_words(setting, scheme);
}

/// The figure after `key` in a pointer; none where the pointer has no such part.
std::optional<std::size_t> place_after(const std::string& pointer, const std::string& key) {
    const std::size_t at = pointer.find(key);
    if (at == std::string::npos) return std::nullopt;
    return static_cast<std::size_t>(std::strtoul(pointer.c_str() + at + key.size(), nullptr, 10));
}

}  // namespace

std::string end_of_run(const site::Job& job, std::size_t run) {
    return name_of(*site::find_building(job, job.runs[run].to));
}

RunAnswer outline_of(const study::Setting<Silent>& setting, const study::RunScheme& scheme) {
    RunAnswer r;
    r.id = setting.run->id;
    r.phases = scheme.phases;
    const site::Job& job = *setting.job;
    if (job.runs.size() > 1 && r.phases == 1) {
        const auto place = static_cast<std::size_t>(setting.run - job.runs.data());
        r.line = study::lines_of_runs(setting)[place];
    }
    r.stretches = stretches_of(setting, scheme);
    static_cast<CableAnswer&>(r) = longest(r.stretches);
    r.fed_from = site::word(scheme.fed_from);
    if (!setting.house.at_house) {
        const site::Building& from = *site::find_building(*setting.job, setting.run->from);
        r.feeder = from.name.empty() ? from.id : from.name;
    }
    r.device = {scheme.device->standard, scheme.device->curve, kind_of_device(scheme.device->kind),
                scheme.device->rating.number(), scheme.device->breaking.value.number() / 1000};
    r.device_stays = scheme.head_stays;
    if (const auto residual = study::residual_at_head(scheme)) {
        r.rcd = RcdAnswer{
            residual->sensitivity.number() * 1000, "", residual->delayed, {"the run"}, ""};
    }
    return r;
}

BuildingAnswer building_outline(const study::Setting<Silent>& setting,
                                const study::RunScheme& scheme) {
    const site::Building& building = *setting.building_facts;
    BuildingAnswer b;
    b.id = building.id;
    b.name = name_of(building);
    b.earthing = study::earthing_word(scheme.earthing);
    b.main_switch = scheme.phases == 3 ? "four-pole, at the building's board"
                                       : "double-pole, at the building's board";
    const double least = setting.catalogue->limits.bond_min.value.number();
    const double fitted = study::local_bond(setting, scheme.earthing).number();
    for (const study::MetalPart& part : setting.building.parts) {
        if (part.extraneous) b.bonding.push_back({part.name, least, fitted});
    }
    return b;
}

std::string brief_words(const study::Setting<Silent>& setting, const study::RunScheme& scheme) {
    SchemeAnswer s;
    s.building.earthing = study::earthing_word(scheme.earthing);
    s.run = outline_of(setting, scheme);
    return short_words(s);
}

std::string whole_words(const Question& q, const solve::Solution& solution) {
    if (!solution.sound()) return "";
    const std::size_t count = solution.schemes.size();
    std::string words = fmt::format("{} run{}", count, count == 1 ? "" : "s");
    if (count > most_told) return words + ", as toft design tells of each";
    const auto order = tree::outwards(q.job);
    for (std::size_t i = 0; i < count; ++i) {
        words += (i == 0 ? ": " : "; ") + told(q, solution, order[i].run, i);
    }
    return words;
}

std::string changed_words(const Question& q, const solve::Solution& solution,
                          const Against& before) {
    const solve::Solution& than = before.solution;
    if (!than.sound()) return whole_words(q, solution);
    const auto order = tree::outwards(q.job);
    std::vector<std::size_t> other;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const bool same =
            study::scheme_key(solution.schemes[i]) == study::scheme_key(than.schemes[i]);
        if (!same) other.push_back(i);
    }
    if (other.empty()) return "built " + before.called;
    std::string words;
    if (other.size() > most_told) {
        words = fmt::format("{} runs are built otherwise: to ", other.size());
        for (std::size_t k = 0; k < other.size() && k < most_named; ++k) {
            words += (k == 0 ? "" : ", ") + end_of_run(q.job, order[other[k]].run);
        }
        if (other.size() > most_named) {
            words += fmt::format(" and {} more", other.size() - most_named);
        }
        return words;
    }
    for (const std::size_t i : other) {
        words += (words.empty() ? "" : "; ") + told(q, solution, order[i].run, i);
    }
    return other.size() < order.size() ? words + "; all else " + before.called : words;
}

std::string place_of_fact(const site::Job& job, const std::string& pointer) {
    if (const auto building = place_after(pointer, "/buildings/")) {
        return name_of(job.buildings[*building]);
    }
    const auto stated = place_after(pointer, "/runs/");
    if (!stated) return "";
    std::size_t run = 0;
    while (run < job.runs.size() && job.runs[run].stated_at.value_or(run) != *stated) ++run;
    if (run == job.runs.size()) return "";
    const std::string way = "on the way to " + end_of_run(job, run);
    const auto leg = place_after(pointer, "/legs/");
    return leg ? fmt::format("{}, leg {}", way, *leg + 1) : way;
}

}  // namespace toft::answer
