#pragma once
// A job that keeps the engine busy.

#include "cli/program.h"
#include "http/json.h"

namespace toft::server {

/// Sixty pillars one behind the other on TT: many seconds of work.
inline Json long_job() {
    Json job = Json::parse(cli::text_of(cli::example("lapwing-field")));
    job["intake"]["earthing"] = "TT";
    job["intake"]["ze_ohm"] = {{"value", 40}, {"basis", "measured"}};
    job["wishes"] = Json::object();
    job["buildings"] = Json::array({{{"id", "house"}, {"at", "origin"}}});
    job["runs"] = Json::array();
    for (int i = 1; i <= 60; ++i) {
        const std::string id = "pillar " + std::to_string(i);
        Json electrode = {{"rods", 1}};
        electrode["resistance_ohm"] = {{"value", 60 + i}, {"basis", "measured"}};
        job["buildings"].push_back({{"id", id}, {"load_w", 100}, {"electrode", electrode}});
        Json leg = {{"method", "buried direct"}, {"length_m", 14 + i * 7 % 23}};
        job["runs"].push_back({{"id", "run " + std::to_string(i)},
                               {"from", i == 1 ? "house" : "pillar " + std::to_string(i - 1)},
                               {"to", id},
                               {"phases", 3},
                               {"legs", Json::array({leg})}});
    }
    return job;
}

}  // namespace toft::server
