#pragma once
// What the recommended run can still feed, and what usual additions of later years would take: each
// is put into the job and the job solved anew. Page: docs/methods/later.md.

#include "answer/answer.h"

namespace toft::outlook {

/// A rule that ends what can be added.
struct CeilingAnswer {
    std::string rule;
    double more_a = 0;   ///< amperes on the most loaded line, beside what is planned
    double more_kw = 0;  ///< that on one line at unity power factor
};

/// How much of the run as built serves with an addition behind it.
enum class Keeps { all, cables, nothing };

/// "fits", "new head", "new run".
const char* keeps_word(Keeps keeps);

struct AdditionAnswer {
    std::string key, says;
    double load_w = 0, length_m = 0;
    std::string basis;  ///< of its figures
    Keeps keeps = Keeps::nothing;
    std::vector<std::string> fails;  ///< rules that the run as built then fails
    std::string scheme_key, scheme;  ///< to build now with it in mind; empty where nothing is sound
    /// Pounds with tax, its own circuit or run with it. None where nothing is sound.
    std::optional<double> more_now;  ///< the run built now for it, against the run as recommended
    /// … left until later: on the run as built where that serves; on its cables with another head,
    /// the first head for nothing; else the whole run built again, nothing of it used.
    std::optional<double> more_later;
};

struct LaterAnswer {
    std::string job;
    std::string scheme_key, scheme;  ///< as recommended; empty where nothing is sound
    double total = 0;                ///< its price, with tax
    double design_current_a = 0;
    std::vector<CeilingAnswer> ceilings;  ///< the nearest first; none within a hundredfold: empty
    std::vector<AdditionAnswer> additions;
    std::vector<std::string> notes;
    std::vector<std::string> cautions;
};

/// Of a (valid) job of one run.
LaterAnswer later(const answer::Question& question);

/// The job with that addition in its building or behind it.
site::Job with_addition(const tables::Catalogue& catalogue, const site::Job& job,
                        const tables::AdditionRow& row);

}  // namespace toft::outlook
