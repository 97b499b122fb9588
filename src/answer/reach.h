#pragma once
// How far each size of cable reaches on a job's supply: for every load the longest run, and the
// rule that ends it. Page: docs/methods/reach.md.

#include "answer/answer.h"

#include <string>
#include <vector>

namespace toft::answer {

/// What the tables are made for.
struct ReachWish {
    std::vector<std::string> families;  ///< cable families; empty: those the job's wishes offer, or
                                        ///< armoured XLPE copper
    std::string standard = "BS EN 60898";  ///< of the devices, by which the loads go
    std::string curve = "B";               ///< ignored for fuses
};

/// The longest run of one size at one load.
struct ReachCell {
    double metres = 0;     ///< 0: it does not serve that load at any length
    std::string ended_by;  ///< rule that fails beyond; empty where nothing ends it in reach
};

struct ReachRow {
    double section_mm2 = 0;
    std::vector<ReachCell> cells;  ///< by load
};

/// One kind of cable with what protects in it.
struct ReachTable {
    std::string family;
    int cores = 2;
    std::string protective_conductor;
    std::vector<ReachRow> rows;
};

struct ReachAnswer {
    std::string job;
    std::string run;     ///< of a job of several, which
    std::string laid;    ///< how the cable is taken to lie
    std::string supply;  ///< the supply in words
    std::string device;  ///< standard and curve of the devices
    int phases = 1;
    double longest_m = 0;         ///< nothing is looked at beyond
    std::vector<double> loads_a;  ///< fully loaded devices of these ratings
    std::vector<ReachTable> tables;
    std::vector<std::string> assumed;
    std::vector<std::string> cautions;
};

/// Tables for the supply and the ground of the (valid) job. Its longest leg says how cable lies;
/// open facts are at their worse end.
ReachAnswer reach(const Question& question, const ReachWish& wish);

}  // namespace toft::answer
