#pragma once
// The list of materials on paper: for whoever orders and whoever carries it to the job. Page:
// docs/materials.md.

#include "paper/subject.h"
#include "ware/list.h"

namespace toft::paper {

/// Without prices: those stand in the client's paper.
page::Paper materials_of(const Subject& subject, const ware::List& list);

}  // namespace toft::paper
