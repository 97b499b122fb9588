#pragma once
// Which figures of a survey may be other than stated, by how much, and on whose word. Page:
// docs/methods/tolerance.md.

#include "tolerance/facts.h"

#include <optional>

namespace toft::tolerance {

/// How far figures may be off on the word of who asks, to either side; for those stated as one
/// figure. Temperatures in kelvins, the rest in per cent.
struct Wish {
    std::optional<double> length, ze, load, soil, temperature;
    bool as_stated = false;  ///< ranges of the survey only, no usual tolerances
    bool open = false;       ///< facts nobody gave vary too, evenly over the rulebook's range
    std::size_t samples = 1 << 16;
    std::size_t pool = 2048;  ///< settings prepared for each group of figures
};

/// Whose word a range is.
enum class Word { survey, tables, asked, rulebook };

/// "survey", "usual tolerance", "as asked", "rulebook's range".
const char* word_of(Word word);

/// A figure that varies.
struct Varied {
    std::string pointer;
    std::string says;
    std::string unit;
    Kind kind = Kind::other;
    double low = 0, likely = 0, high = 0;  ///< likely: as stated, or the middle
    site::Spread spread = site::Spread::even;
    Word word = Word::survey;
    const Citation* citation = nullptr;  ///< of a usual tolerance or the rulebook's range
    Set set;
};

/// Those that vary: every stated range, and single figures by the wish or by the usual tolerance.
/// A maximum that an operator declares stays one. All loads stated as single figures move together.
std::vector<Varied> varied_in(const Place& place, const Wish& wish);

/// The job with each figure of `varied` at one value.
site::Job job_at(const site::Job& job, const std::vector<Varied>& varied,
                 const std::vector<double>& values);

/// The job with each figure of `varied` anywhere in its range.
site::Job job_over(const site::Job& job, const std::vector<Varied>& varied);

}  // namespace toft::tolerance
