#pragma once
// Changes a job where its JSON says something, so that most of what is tried still is a job: a
// figure grows or shrinks, a part is left out, said twice or said as elsewhere in the job.

#include <nlohmann/json.hpp>

#include <cmath>
#include <iterator>
#include <random>
#include <string>
#include <vector>

namespace toft::fuzz {

using Json = nlohmann::ordered_json;

class Change {
public:
    explicit Change(unsigned seed) : random_(seed) {}

    /// The text of the job with one to three changes; empty where it is no JSON.
    std::string of(const std::string& text) {
        Json json = Json::parse(text, nullptr, false);
        if (!json.is_structured() || json.empty()) return "";
        for (std::size_t n = 1 + pick(3); n > 0; --n) {
            std::vector<Json*> all;
            gather(json, all);
            if (!all.empty()) change(*all[pick(all.size())], all);
        }
        return json.dump(-1, ' ', false, Json::error_handler_t::replace);
    }

private:
    std::size_t pick(std::size_t count) { return random_() % count; }

    static void gather(Json& json, std::vector<Json*>& all) {
        for (Json& each : json) {
            all.push_back(&each);
            if (each.is_structured()) gather(each, all);
        }
    }

    void change(Json& json, const std::vector<Json*>& all) {
        if (json.is_number()) {
            figure(json);
        } else if (json.is_boolean() && pick(2)) {
            json = !json.get<bool>();
        } else if (json.is_structured() && !json.empty() && pick(2)) {
            const auto at = static_cast<std::ptrdiff_t>(pick(json.size()));
            if (json.is_array() && pick(2)) {
                json.push_back(Json(json[static_cast<std::size_t>(at)]));
            } else {
                json.erase(std::next(json.begin(), at));
            }
        } else {
            json = Json(like(json, all));
        }
    }

    /// Another part of the same sort, so that a word takes the place of a word.
    const Json& like(const Json& json, const std::vector<Json*>& all) {
        for (int attempt = 0; attempt < 20; ++attempt) {
            const Json& other = *all[pick(all.size())];
            if (other.type() == json.type()) return other;
        }
        return json;
    }

    void figure(Json& json) {
        const double x = json.get<double>();
        const double by = std::exp(std::normal_distribution<double>(0, 1)(random_));
        switch (pick(5)) {
            case 0:
                json = 0;
                break;
            case 1:
                json = std::floor(x * by);
                break;
            case 2:
                json = {{"low", x / by}, {"high", x * (1 + by)}, {"basis", "assumed"}};
                break;
            default:
                json = x * by;
        }
    }

    std::mt19937 random_;
};

}  // namespace toft::fuzz
