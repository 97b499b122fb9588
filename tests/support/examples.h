#pragma once
// The price book and the jobs that come with the program. Header only, so that the benches may use
// it too; whoever includes it must be compiled with TOFT_SOURCE_DIR.

#include "codec/job.h"
#include "price/book.h"
#include "tables/catalogue.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace toft::support {

/// The value, or the end of the program with the faults.
template <class T>
T need(Outcome<T> outcome, const std::string& what) {
    if (outcome) return std::move(*outcome);
    std::fprintf(stderr, "%s\n", what.c_str());
    for (const Fault& f : outcome.error()) {
        std::fprintf(stderr, "%s: %s\n", f.pointer.c_str(), f.says.c_str());
    }
    std::abort();
}

/// The invented price book that comes with the program.
inline price::Book demo_book(const tables::Catalogue& catalogue) {
    return need(
        price::read_book("demo price book", tables::embedded_text("price/demo.csv"), catalogue),
        "the demo price book");
}

/// A text of the project; empty when there is no such file.
inline std::string project_text(const std::string& path) {
    std::ifstream in(std::string(TOFT_SOURCE_DIR) + "/" + path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

/// Names of all example jobs.
inline const std::vector<std::string>& example_names() {
    static const std::vector<std::string> names{
        "demo",          "caravan-no-scheme", "steel-container", "three-facts",
        "tn-c-s-office", "tn-s-workshop",     "tt-shed"};
    return names;
}

/// The job examples/<name>.json.
inline site::Job example_job(const std::string& name, const tables::Catalogue& catalogue) {
    return need(codec::read_job(project_text("examples/" + name + ".json"), catalogue),
                "examples/" + name + ".json");
}

}  // namespace toft::support
