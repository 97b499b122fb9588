// The engine behind a plain C boundary, for WebAssembly: no I/O, no clock, nothing thrown across
// it. The caller puts UTF-8 into memory of the module (malloc, free) and reads the result there.

#include "answer/answer.h"
#include "codec/answer.h"
#include "codec/job.h"
#include "tables/embedded.h"

#include <exception>
#include <string>
#include <string_view>

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

struct Workbench {
    tables::Catalogue catalogue;
    price::Book book;
};

Outcome<Workbench> load_workbench() {
    auto catalogue = tables::load_catalogue(tables::embedded_files());
    if (!catalogue) return failed(catalogue.error());
    auto book =
        price::read_book("demo price book", tables::embedded_text("price/demo.csv"), *catalogue);
    if (!book) return failed(book.error());
    return Workbench{std::move(*catalogue), std::move(*book)};
}

Faults program_fault(const std::string& says) { return {Fault{"program", "", says, "", {}}}; }

std::string designed(std::string_view text, bool all) {
    static const Outcome<Workbench> bench = load_workbench();
    if (!bench) return codec::write_faults(program_fault(bench.error().front().says));
    const auto job = codec::read_job(text, bench->catalogue);
    if (!job) return codec::write_faults(job.error());
    return codec::write_answer(answer::design({bench->catalogue, bench->book, *job, all, nullptr}));
}

}  // namespace

extern "C" {

/// Designs the job of `length` bytes at `job`: the answer, or the faults, as JSON that ends with a
/// zero byte and stands until the next call. `all` other than 0 shows every sound scheme.
TOFT_EXPORT const char* toft_design(const char* job, int length, int all) {
    try {
        if (!job || length < 0) {
            result() = codec::write_faults(program_fault("no job was handed over"));
        } else {
            result() = designed({job, static_cast<std::size_t>(length)}, all != 0);
        }
    } catch (const std::exception& error) {
        result() = codec::write_faults(program_fault(error.what()));
    } catch (...) {
        result() = codec::write_faults(program_fault("the program failed"));
    }
    return result().c_str();
}

/// Bytes of the last result, without its zero byte.
TOFT_EXPORT int toft_result_length() { return static_cast<int>(result().size()); }
}
