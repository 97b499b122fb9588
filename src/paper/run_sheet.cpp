#include "paper/run_sheet.h"

#include "joins/terminals.h"
#include "parts/words.h"

#include <algorithm>

namespace toft::paper {

RunSheet run_sheet(const Subject& subject, const answer::SchemeAnswer& part) {
    auto job = std::make_shared<const site::Job>(answer::seen_from(subject.job, part.run.id));
    picture::Stage stage = picture::set_stage(*job, &part);
    return {subject, part, std::move(job), std::move(stage)};
}

std::string near_words(const RunSheet& sheet) { return joins::near_name(sheet.stage); }

std::string far_words(const RunSheet& sheet) {
    return parts::name_or(sheet.building().name, sheet.building().id);
}

namespace {

/// "/ground/thermal_resistivity_km_w" as "thermal resistivity of the ground": for a fact that the
/// answer has no words of its own for.
std::string pointer_words(const std::string& pointer) {
    if (pointer.empty() || pointer.front() != '/') return pointer;
    std::vector<std::string> names;
    for (std::size_t at = 1; at <= pointer.size();) {
        const std::size_t end = std::min(pointer.find('/', at), pointer.size());
        const std::string name = pointer.substr(at, end - at);
        if (name.find_first_not_of("0123456789") != std::string::npos) names.push_back(name);
        at = end + 1;
    }
    if (names.empty()) return "a fact of the survey";
    std::string words = names.back();
    for (const char* unit : {"_ohm_m", "_km_w", "_kohm", "_ohm", "_mm2", "_mm", "_ka", "_kwh_year",
                             "_w", "_a", "_c", "_m"}) {
        const std::string tail = unit;
        if (words.size() <= tail.size()) continue;
        if (words.compare(words.size() - tail.size(), tail.size(), tail) != 0) continue;
        words.resize(words.size() - tail.size());
        break;
    }
    if (names.size() > 1) words += " (" + names[names.size() - 2] + ")";
    for (char& c : words) c = c == '_' ? ' ' : c;
    return words;
}

}  // namespace

std::string fact_words(const answer::Answer& answer, const std::string& pointer) {
    for (const answer::UnknownAnswer& unknown : answer.unknowns) {
        if (unknown.fact != pointer) continue;
        return unknown.question.empty() ? unknown.says : unknown.says + ": " + unknown.question;
    }
    return pointer_words(pointer);
}

}  // namespace toft::paper
