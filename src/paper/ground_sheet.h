#pragma once
// The sheet of whoever digs: plan, trenches cut through, legs, quantities, what comes before
// digging, what is photographed before it is covered. Page: docs/ground-sheet.md.

#include "paper/subject.h"

namespace toft::paper {

page::Paper ground_sheet(const Subject& subject);

}  // namespace toft::paper
