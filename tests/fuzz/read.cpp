// Any bytes as a job: it loads, or is refused with faults that say something. What loads says the
// same job when its JSON is written otherwise: without white space, with every letter beyond ASCII
// as an escape, its keys the other way round.

#include "codec/job.h"
#include "fuzz/fuzzing.h"

#include <cstdint>
#include <string_view>

namespace {

using namespace toft;
using fuzz::require;
using Json = nlohmann::ordered_json;

void judge(const Faults& faults) {
    require(!faults.empty(), "a refusal has a fault");
    for (const Fault& fault : faults) {
        require(!fault.code.empty(), "a fault has a code");
        require(!fault.says.empty(), "a fault says something");
        require(fault.pointer.empty() || fault.pointer.front() == '/', "a pointer is one");
    }
    require(fuzz::is_json(codec::write_faults(faults)), "faults are JSON");
}

Json turned_round(const Json& json) {
    if (json.is_array()) {
        Json array = Json::array();
        for (const Json& each : json) array.push_back(turned_round(each));
        return array;
    }
    if (!json.is_object()) return json;
    Json object = Json::object();
    for (auto key = json.size(); key-- > 0;) {
        const auto it = std::next(json.begin(), static_cast<std::ptrdiff_t>(key));
        object[it.key()] = turned_round(it.value());
    }
    return object;
}

void judge(const site::Job& job, std::string_view text) {
    const Json json = Json::parse(text, nullptr, false);
    require(json.is_object(), "a job is a JSON object");
    for (const std::string& again : {json.dump(-1, ' ', true), turned_round(json).dump(3)}) {
        const auto read = codec::read_job(again, fuzz::catalogue());
        require(read.has_value(), "a job that is written otherwise loads too");
        require(*read == job, "it is the same job");
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto job = codec::read_job(text, fuzz::catalogue());
    if (job) {
        judge(*job, text);
    } else {
        judge(job.error());
    }
    return 0;
}
