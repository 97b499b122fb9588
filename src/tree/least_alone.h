#pragma once
// What a run costs at least, whatever it is fed from and whatever hangs on it: only prices are
// looked at, no rule.

#include "tree/judge.h"

#include <string>

namespace toft::tree {

/// Digging a leg that may share its trench, pounds with tax.
struct Dig {
    std::string trench;
    Metres length;  ///< the longest it may be
    double price = 0;
};

struct LeastAlone {
    double price = 0;  ///< with tax, without digging where a trench may be shared; infinite where
                       ///< nothing on offer fits the run
    std::vector<Dig> digs;
};

/// `run`: place in the job as stated.
LeastAlone least_alone(const Workplace& at, std::size_t run);

}  // namespace toft::tree
