#include "curves/plot.h"

#include "curves/band.h"
#include "curves/ink.h"
#include "curves/marks.h"

namespace toft::curves {

Items plotted(const LogPaper& paper, const PlotOf& of) {
    Items items = band(paper, *of.scheme.scheme.device);
    append(items, current_marks(paper, of.scheme.run));
    append(items, time_marks(paper, of.scheme.scheme, time_allowed(of.catalogue, of.job)));
    append(items, withstand_lines(paper, of.lines));
    append(items, fault_marks(paper, of.scheme.run.figures));
    return items;
}

}  // namespace toft::curves
