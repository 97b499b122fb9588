// The engine behind a plain C boundary, for WebAssembly: no I/O, no clock, nothing thrown across
// it. The caller puts UTF-8 into memory of the module (malloc, free) and reads the result there.
// Page: docs/requests.md.

#include "codec/answer.h"
#include "request/bench.h"
#include "request/request.h"

#include <optional>

#ifdef __EMSCRIPTEN__
#include <emscripten.h>
#define TOFT_EXPORT EMSCRIPTEN_KEEPALIVE
#else
#define TOFT_EXPORT
#endif

namespace {

using namespace toft;

/// Owned here until the next call.
std::string& result() {
    static std::string text;
    return text;
}

#ifdef TOFT_ALL_VERBS
const auto verbs = request::verbs;
const auto tables_read = tables::load_catalogue;
#else
const auto verbs = request::first_verbs;
const auto tables_read = tables::load_for_answers;
#endif

std::string answered(std::string_view verb, std::string_view body) {
    static Outcome<request::Bench> bench = request::Bench::load(tables_read);
    if (!bench) return codec::write_faults(bench.error());
    return request::answer(verbs(), *bench, verb, body);
}

std::string_view text_at(const char* start, int length) {
    if (!start || length < 0) return {};
    return {start, static_cast<std::size_t>(length)};
}

}  // namespace

extern "C" {

/// The answer to a verb, JSON that ends with a zero byte and stands until the next call.
TOFT_EXPORT const char* toft_work(const char* verb, int verb_length, const char* body,
                                  int body_length) {
    try {
        result() = answered(text_at(verb, verb_length), text_at(body, body_length));
    } catch (...) {
        result() = R"({"format":"toft-faults/1","faults":[{"code":"program","pointer":"",)"
                   R"("says":"the program failed","nearest":null,"allowed":[]}]})";
    }
    return result().c_str();
}

/// Bytes of the last result, without its zero byte.
TOFT_EXPORT int toft_result_length() { return static_cast<int>(result().size()); }
}
