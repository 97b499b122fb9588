#pragma once
// Questions to the program as a whole, with the tables and the invented price book.

#include "answer/answer.h"
#include "support/catalogue.h"
#include "support/examples.h"

#include <string>

namespace toft::support {

inline const price::Book& demo_book() {
    static const price::Book loaded = demo_book(catalogue());
    return loaded;
}

/// The question of that job, which must outlive it.
inline answer::Question question_of(const site::Job& job) {
    return {catalogue(), demo_book(), job, false, nullptr};
}

/// The open fact's effect by its pointer; empty when the answer does not name it.
inline std::string effect_of(const answer::Answer& answer, const std::string& pointer) {
    for (const answer::UnknownAnswer& u : answer.unknowns) {
        if (u.fact == pointer) return u.effect;
    }
    return "";
}

}  // namespace toft::support
