#pragma once
// The answer, a working, the rules and the sources as a person reads them.

#include "answer/answer.h"
#include "answer/levers.h"
#include "answer/reach.h"
#include "answer/recorded.h"
#include "answer/unknowns.h"
#include "groundwork/ground.h"
#include "outlook/later.h"
#include "outlook/tolerances.h"

#include <string>

namespace toft::cli {

/// The answer: what to do, how close it is to the limits, what else would do, what fell and why.
std::string design_screen(const answer::Answer& answer);

/// How far a design has come, on one line.
std::string progress_words(const answer::Progress& progress);

/// How each outbuilding should be earthed: question, what was found, what follows, whose word it
/// is; then where each way stands.
std::string why_screen(const std::string& job, const std::vector<walk::Walk>& walks,
                       const std::vector<std::string>& cautions);

/// What goes dark for each fault, the devices in a row, and who asks for what protection.
std::string dark_screen(const answer::Answer& answer, const answer::SchemeAnswer& scheme);

/// What to go and find out, most worth first, and what may be left.
std::string ask_screen(const answer::AskAnswer& ask);

/// What single changes would bring.
std::string levers_screen(const answer::LeversAnswer& levers);

/// A scheme while figures vary: chances, the worst, what moves it, how far it holds.
std::string tolerance_screen(const outlook::ToleranceAnswer& tolerance);

/// What a run can still feed, and what additions would take.
std::string later_screen(const outlook::LaterAnswer& later);

/// How far cables reach, as tables.
std::string reach_screen(const answer::ReachAnswer& reach);

/// What the ground of the place does.
std::string ground_screen(const answer::GroundAnswer& ground);

/// One figure with its working.
std::string working_screen(const answer::Working& working, const std::string& scheme_key);

/// All rules with clause and what they read.
std::string rules_screen();

/// The bibliography, with how many figures rest on each entry and how well they are known.
std::string sources_screen(const tables::Catalogue& catalogue);

/// Faults, one paragraph each.
std::string faults_screen(const Faults& faults);

}  // namespace toft::cli
