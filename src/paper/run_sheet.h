#pragma once
// What the parts of an installer's sheet share: one run of the scheme with the job seen from it.

#include "paper/subject.h"
#include "picture/stage.h"

#include <memory>
#include <string>
#include <vector>

namespace toft::paper {

/// Points into the subject; its own job lives as long as it does, also when it is moved.
struct RunSheet {
    const Subject& subject;
    const answer::SchemeAnswer& part;
    std::shared_ptr<const site::Job> job;  ///< the part's run first
    picture::Stage stage;

    const answer::RunAnswer& run() const { return part.run; }
    const answer::BuildingAnswer& building() const { return part.building; }
};

RunSheet run_sheet(const Subject& subject, const answer::SchemeAnswer& part);

/// The near end in words, "the house" or "the board of Garage", and the far building's name.
std::string near_words(const RunSheet& sheet);
std::string far_words(const RunSheet& sheet);

/// A fact's pointer in the words of the answer's unknowns; as it is where none names it.
std::string fact_words(const answer::Answer& answer, const std::string& pointer);

}  // namespace toft::paper
