#include "paper/subject.h"

#include "base/text.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::paper {

std::vector<const answer::SchemeAnswer*> runs_of(const Subject& s) {
    const answer::SchemeAnswer& scheme = s.answer.schemes[s.scheme];
    std::vector<const answer::SchemeAnswer*> all{&scheme};
    for (const answer::SchemeAnswer& part : scheme.further) all.push_back(&part);
    return all;
}

const site::Run& run_of(const Subject& s, const answer::SchemeAnswer& part) {
    for (const site::Run& run : s.job.runs) {
        if (run.id == part.run.id) return run;
    }
    return s.job.runs.front();
}

std::string building_name(const Subject& s, const std::string& id) {
    const site::Building* building = site::find_building(s.job, id);
    if (!building) return id;
    if (building->origin) return "the house";
    return building->name.empty() ? building->id : building->name;
}

std::vector<page::Block> standing_cautions(const Subject& s) {
    std::vector<page::Block> blocks;
    for (const std::string& caution : s.answer.cautions) {
        if (blocks.empty()) {
            blocks.push_back(page::Caution{caution});
        } else {
            blocks.push_back(page::Words{caution, "–"});
        }
    }
    return blocks;
}

const char* standing_caution() {
    return "Calculated, not inspected: the local code, the network operator and a competent, "
           "licensed person decide.";
}

std::string part_name(const answer::BondAnswer& bond) {
    return bond.part.substr(0, bond.part.find_last_not_of(", ") + 1);
}

page::Paper blank(const Subject& s, const std::string& name) {
    page::Paper paper;
    paper.name = name;
    paper.job = s.answer.job;
    paper.edition = fmt::format("{}; data {}", s.answer.edition, s.answer.data_version);
    paper.date = s.date;
    paper.caution = standing_caution();
    return paper;
}

namespace {

/// With a comma before every three digits of the whole part.
std::string with_commas(std::string digits) {
    const std::size_t end =
        digits.find('.') == std::string::npos ? digits.size() : digits.find('.');
    for (std::size_t at = end; at > 3; at -= 3) digits.insert(at - 3, ",");
    return digits;
}

std::string money(double pounds, int places) {
    return (pounds < 0 ? "−£" : "£") + with_commas(fixed(std::fabs(pounds), places));
}

}  // namespace

std::string pounds_words(double pounds) { return money(pounds, 0); }
std::string pence_words(double pounds) { return money(pounds, 2); }

std::string figure(double value, const char* unit, int digits) {
    return significant(value, digits) + " " + unit;
}

std::string figure(const std::optional<double>& value, const char* unit, int digits) {
    return value ? figure(*value, unit, digits) : "not known";
}

std::string cable_words(const answer::CableAnswer& cable) {
    std::string words =
        fmt::format("{}-core {} mm² {}", cable.cores, significant(cable.live_mm2, 4), cable.family);
    if (cable.parallel > 1) words = fmt::format("{} × {}", cable.parallel, words);
    if (!cable.standard.empty()) words += " to " + cable.standard;
    if (cable.separate_mm2) {
        words +=
            fmt::format(", with a separate {} mm² conductor", significant(*cable.separate_mm2, 4));
    }
    if (!cable.laid.empty()) words += " (" + cable.laid + ")";
    return words;
}

}  // namespace toft::paper
