// Any verb with any body: JSON comes back. Only what is done at once is asked for: what designs a
// job is for other programs.

#include "request/request.h"

#include "fuzz/fuzzing.h"

#include <cstdint>
#include <string_view>

namespace {

using namespace toft;

request::Bench& bench() {
    static auto loaded = request::Bench::load();
    fuzz::require(loaded.has_value(), "the tables load");
    return *loaded;
}

}  // namespace

/// The bytes as a body, and as the job of one.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    const std::string job = "{\"job\":" + std::string(text) + "}";
    for (const std::string_view body : {text, std::string_view(job)}) {
        for (const std::string_view verb : {"about", "check", "prices", "nothing of the kind"}) {
            fuzz::require(fuzz::is_json(request::answer(bench(), verb, body)), "JSON comes back");
        }
    }
    return 0;
}
