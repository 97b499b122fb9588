#pragma once
// How much of each limit a scheme uses: a bar a rule, longest first, with value, limit, unit and
// verdict. Rules that compare no figures are told in words.

#include "answer/answer.h"
#include "drawing/scene.h"

#include <string>
#include <vector>

namespace toft::picture {

struct UseBar {
    drawing::Spans label;  ///< plain words and the symbol
    std::string figures;   ///< "1.9 %, at most 2.5 %"
    double use = 0;        ///< share of the limit; over 1 when it fails
    rules::Verdict verdict = rules::Verdict::meets;
    std::string subject = {};  ///< the circuit it is about; empty for the run
};

/// A verdict that rests on no figure.
struct PlainVerdict {
    drawing::Spans label;
    rules::Verdict verdict = rules::Verdict::meets;
    std::string subject = {};  ///< the circuit it is about; empty for the run
};

/// What a rule is about, in the trade's words with its symbol; its name for a rule not known here.
drawing::Spans rule_words(const std::string& rule);

/// The label with the circuit's name before it where it has one, cut so that all of it is no wider
/// than `room` in that style.
drawing::Spans named_label(const std::string& subject, const drawing::Spans& label, double room,
                           const drawing::TextStyle& style);

/// The scheme's findings that have a limit, the largest use first.
std::vector<UseBar> bars_of(const answer::SchemeAnswer& scheme);

/// The scheme's findings that have none, in the rulebook's order.
std::vector<PlainVerdict> plain_verdicts_of(const answer::SchemeAnswer& scheme);

/// The bar alone in `whole`, which is as long as the limit; over the limit it reaches beyond.
drawing::Items bar_alone(const UseBar& bar, const drawing::Box& whole);
/// How far past the limit a bar may reach, in shares of it.
inline constexpr double most_use = 1.2;

/// For narrow sheets: each rule with its verdict over its bar and figures, `tall_bar_row` each,
/// from the top of `box` down over its width.
drawing::Items tall_use_bars(const std::vector<UseBar>& bars, const drawing::Box& box);
inline constexpr double tall_bar_row = 38;

/// The bars from the top of `box` down, as many as it has room for; says how many are left out.
drawing::Items use_bars(const std::vector<UseBar>& bars, const drawing::Box& box);

/// The verdicts one after another in rows of the width of `box`, from its top.
drawing::Items plain_verdicts(const std::vector<PlainVerdict>& verdicts, const drawing::Box& box);

/// Height of one bar's row: as much as it wants, and what it can do with.
inline constexpr double bar_row = 16.5;
inline constexpr double least_bar_row = 14.0;

}  // namespace toft::picture
