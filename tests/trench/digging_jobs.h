#pragma once
// Ground works of the plain job and of examples.

#include "picture/looking.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "trench/works.h"

#include <string>

namespace toft::trench {

inline const tables::Catalogue& shop() { return support::catalogue(); }

/// Of the first scheme of an example, or of the pictures' jobs.
inline Works works_of_example(const std::string& name) {
    const picture::Example& one = picture::example(name);
    return works_of({shop(), one.job, &one.answer.schemes.front()});
}

/// Of a job nothing was designed for: no cable is known.
inline Works works_of_job(const site::Job& job) { return works_of({shop(), job, nullptr}); }

inline Lying cable_of(double across_mm) {
    return {Kind::cable, "A1", "cable", millimetres(across_mm)};
}

}  // namespace toft::trench
