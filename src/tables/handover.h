#pragma once
// What is handed over with the work: the tests of a new run in their order; labels to fix; what a
// client and a householder are told.

#include "base/citation.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

struct TestStep {
    std::string key;   ///< one word
    bool dead = true;  ///< made with everything isolated
    std::string what;
    std::string how;
    std::string clause;
    const Citation* citation = nullptr;
};

/// What may hold of a building as a scheme builds it; rows of words go by these.
inline constexpr const char* situations[] = {
    "always",   "own electrode", "shared electrode", "combined earth", "separate earth", "bonded",
    "residual", "buried",        "sources",          "high voltage",   "fuse",           "breaker",
};

/// A label to print, cut out and fix. {building}, {feeder}, {device}, {cable}, {part}, {sources},
/// {voltage} and {months} in its words stand for those of the place.
struct LabelRow {
    std::string key;
    std::string when;   ///< one of the situations
    std::string at;     ///< outbuilding board, near board, house board, origin, bond, rod, route
    std::string style;  ///< warning, plain, chart
    double width_mm = 0;
    std::string big;                  ///< words to be read at arm's length
    std::string small;                ///< words below them
    std::vector<std::string> fields;  ///< to be written in
    std::string clause;
    const Citation* citation = nullptr;
};

/// A sentence for a client or a householder, with the same words in braces.
struct Notice {
    std::string list;  ///< excluded, earth, tripped, ask, button
    std::string when;  ///< one of the situations
    std::string says;
    const Citation* citation = nullptr;
};

/// A word of the trade in plain English.
struct TradeWord {
    std::string word;
    std::string means;
    const Citation* citation = nullptr;
};

struct ClientTerms {
    Cited<double> offer_days;
    Cited<double> choice_dearer;   ///< per cent more than the cheapest, for more headroom
    Cited<double> test_months;     ///< between two presses of a test button
    Cited<double> big_letters;     ///< height of capitals on a label, mm
    Cited<double> small_letters;   ///< the same of its other words, mm
    Cited<double> voltage_notice;  ///< to earth, V; above it a label says so
};

/// What clients and householders are told.
struct Handover {
    std::vector<LabelRow> labels;
    std::vector<Notice> notices;
    std::vector<TradeWord> words;
    ClientTerms terms;
};

}  // namespace toft::tables
