#pragma once
// What a paper is written of: one scheme of an answer, with all its runs. No figure is worked out
// here; every one is the answer's. Page: docs/papers.md.

#include "answer/answer.h"
#include "page/blocks.h"
#include "paper/workings.h"
#include "site/job.h"

#include <string>
#include <vector>

namespace toft::paper {

/// `answer` was worked out from the (valid) `job` and the tables; the scheme must exist.
struct Subject {
    const tables::Catalogue& catalogue;
    const site::Job& job;
    const answer::Answer& answer;
    std::size_t scheme = 0;
    std::string date;                        ///< year-month-day, of making
    std::vector<RunWorkings> workings = {};  ///< of that scheme; none: the record does without
};

/// The scheme's runs from the house outwards, each with its own figures.
std::vector<const answer::SchemeAnswer*> runs_of(const Subject& subject);

/// The job's run of that part.
const site::Run& run_of(const Subject& subject, const answer::SchemeAnswer& part);

/// "Garden studio" or the id of a building without a name; "the house" for the origin.
std::string building_name(const Subject& subject, const std::string& id);

/// What is bonded, to stand by itself: "water pipe".
std::string part_name(const answer::BondAnswer& bond);

/// Head and foot for a paper of that name, without blocks.
page::Paper blank(const Subject& subject, const std::string& name);

/// What the answer has to say before anyone acts on it: the first framed, the rest under it.
std::vector<page::Block> standing_cautions(const Subject& subject);

/// What stands on every paper: who decides.
const char* standing_caution();

/// "£1,234" of whole pounds, "£1,234.50" of pence.
std::string pounds_words(double pounds);
std::string pence_words(double pounds);

/// A figure to so many digits with its unit; "not known" where there is none.
std::string figure(double value, const char* unit, int digits = 3);
std::string figure(const std::optional<double>& value, const char* unit, int digits = 3);

/// "3-core 10 mm² armoured XLPE copper to BS 5467".
std::string cable_words(const answer::CableAnswer& cable);

}  // namespace toft::paper
