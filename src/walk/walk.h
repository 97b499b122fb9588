#pragma once
// The earthing decision of one outbuilding, argued step by step: what is asked, what was found,
// what follows for each way of earthing and on what that stands; then where each way stands, what
// risk it leaves and what would change the answer. Nothing is ranked by a slogan: a way is required
// or ruled out by a fact or it is a matter of judgement. Page: docs/methods/earthing-choice.md.

#include "tables/rulebook.h"
#include "walk/step.h"

namespace toft::walk {

struct Step {
    std::string key;      ///< of the question; parts of the metalwork are counted: "metalwork-1"
    std::string asks;     ///< the question
    std::string found;    ///< the fact as the survey has it
    std::string pointer;  ///< of the part in the job; empty but for metal parts
    Ruling ruling;
    const tables::EarthingBasis* basis = nullptr;
    std::vector<std::string> would_change;
};

/// One way of earthing after all steps.
struct Way {
    Choice choice = Choice::supply_earth;
    Standing standing = Standing::open;
    std::vector<std::string> reasons;  ///< keys of the steps that bear on it
    std::string residual_risk;         ///< what is left even if all is done well
    std::vector<std::string> would_change;
};

struct Walk {
    std::string building;  ///< its id
    std::string name;
    site::Earthing system = site::Earthing::tn_c_s;
    std::vector<Step> steps;
    std::vector<Way> ways;  ///< those that the supply offers
    std::string conclusion;
};

/// Walks all questions with every open fact at its worse end, as `setting` must have them.
Walk walk(const study::Setting<Silent>& setting);

/// Where a choice stands when the steps bear on it so.
Standing standing_of(const std::vector<Step>& steps, Choice choice);

}  // namespace toft::walk
