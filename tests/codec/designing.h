#pragma once
// Designing jobs in tests, without a clock.

#include "answer/answer.h"
#include "codec/answer.h"
#include "codec/reading.h"
#include "tables/embedded.h"

namespace toft::codec {

inline const price::Book& demo_book() {
    static const price::Book book = *price::read_book(
        "demo price book", tables::embedded_text("price/demo.csv"), support::catalogue());
    return book;
}

/// The answer to a job that must load.
inline answer::Answer designed(const Tree& job) {
    const site::Job read = loaded(job);
    return answer::design({support::catalogue(), demo_book(), read, false, nullptr});
}

/// The demo's job as a tree.
inline Tree demo() { return Tree::parse(tables::embedded_text("examples/demo.json")); }

}  // namespace toft::codec
