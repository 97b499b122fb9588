#pragma once
// What stands on the log-log paper of a scheme, the same on every sheet.

#include "answer/answer.h"
#include "curves/log_paper.h"
#include "curves/withstand.h"
#include "site/job.h"

#include <vector>

namespace toft::curves {

/// What a sheet draws of.
struct PlotOf {
    const tables::Catalogue& catalogue;
    const site::Job& job;
    const answer::SchemeAnswer& scheme;
    const std::vector<Withstand>& lines;
};

/// The device's band, currents, times, what the cable withstands and the faults.
drawing::Items plotted(const LogPaper& paper, const PlotOf& of);

}  // namespace toft::curves
