#pragma once
// Which scheme, and of which run, is asked about. Private to request.

#include "request/body.h"
#include "request/picked.h"

namespace toft::request {

/// Either the thing asked for, or faults as text.
template <class T>
struct Or {
    std::optional<T> is;
    std::string faults;
};

/// The run that was named; of several, where none was, the first that leaves the house.
Or<std::size_t> run_named(const site::Job& job, const std::string& name);

/// The scheme of that key, or of that rank in figures, of that run; the first where `which` is
/// empty.
Or<Picked> way_of(const Work& work, const std::string& which, const std::string& run);

/// A question about the run of that way.
answer::Question question_of(const Work& work, const Picked& picked);

/// Place of the scheme of that key, or of that rank in figures, in the answer; the first where
/// `which` is empty.
Or<std::size_t> scheme_named(const answer::Answer& answer, const std::string& which);

}  // namespace toft::request
