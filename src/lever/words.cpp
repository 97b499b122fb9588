#include "lever/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::lever {

namespace {

constexpr std::size_t most_named = 4;

std::string filled(std::string words, const std::string& where) {
    const std::size_t at = words.find("{}");
    if (at != std::string::npos) words.replace(at, 2, where);
    return words;
}

std::string fed_by(const site::Job& job, std::size_t run) {
    return name_of(*site::find_building(job, job.runs[run].to));
}

}  // namespace

std::string names_of(const site::Job& job, const std::vector<std::size_t>& runs) {
    if (runs.size() == job.runs.size() && runs.size() > most_named) {
        return fmt::format("each of the {} buildings", runs.size());
    }
    const bool all = runs.size() <= most_named;
    const std::size_t named = all ? runs.size() : most_named - 1;
    std::string names;
    for (std::size_t i = 0; i < named; ++i) {
        const bool last = all && i + 1 == named;
        names += (i == 0 ? "" : last ? " and " : ", ") + fed_by(job, runs[i]);
    }
    return all ? names : names + fmt::format(" and {} more", runs.size() - named);
}

std::string words_of(const tables::LeverRow& row, const site::Job& job, const Change& change) {
    if (change.count > 1) return filled(row.many, names_of(job, change.runs));
    const std::string words = filled(row.says, change.where);
    if (job.runs.size() == 1 || change.runs.empty()) return words;
    const std::string name = fed_by(job, change.runs.front());
    if (change.where == name) return words;
    const bool on_the_way = row.says.find("leg {}") != std::string::npos;
    return (on_the_way ? "on the way to " : "") + name + ": " + words;
}

}  // namespace toft::lever
