#pragma once
// The papers of a job but its design record (record/design_record.h).

#include "paper/ground_sheet.h"
#include "paper/subject.h"

namespace toft::paper {

page::Paper test_sheet(const Subject& subject);
page::Paper materials(const Subject& subject);
page::Paper installers_sheet(const Subject& subject);
page::Paper users_sheet(const Subject& subject);
page::Paper labels(const Subject& subject);

}  // namespace toft::paper
