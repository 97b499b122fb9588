#pragma once
// Labels for boards, clamps, rods and route: which apply is decided by what the scheme builds.
// Page: docs/papers/labels.md.

#include "paper/label_sheet.h"
#include "paper/subject.h"

#include <string>
#include <vector>

namespace toft::paper {

/// A label that applies, where it goes, and what it rests on.
struct Placed {
    Label label;
    std::string key;    ///< of its row
    std::string place;  ///< "board of Garage"
    const tables::LabelRow* row = nullptr;
};

/// All labels of the scheme: those of the house's board and intake once, then building by building.
std::vector<Placed> labels_of(const Subject& subject);

/// The ways of a building's board, with room for later ones: circuits, those that could not be
/// designed by name; then the ways that feed other buildings.
std::vector<ChartRow> chart_rows(const Subject& subject, const answer::SchemeAnswer& part);

}  // namespace toft::paper
