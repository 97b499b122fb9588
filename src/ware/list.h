#pragma once
// Everything to buy for a scheme with all its runs, merged and in the words of the counter: the
// material lines of its bills, each in one row, and what to ask for. Page: docs/materials.md.

#include "answer/answer.h"
#include "price/bill.h"
#include "site/job.h"
#include "tables/catalogue.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::ware {

enum class Group { near_end, run, ground, far_end, circuits, put_right, other };
inline constexpr int groups = 7;

/// "near end" (the house, or the board that feeds the run), "run", …
const char* group_word(Group group);

struct Row {
    Group group = Group::other;
    std::string what;
    std::string size;
    double quantity = 0;
    std::string unit;
    std::string order;             ///< how it comes: pieces to cut, drums, how many; may be empty
    std::string note;              ///< why this one, in plain words; may be empty
    std::optional<Pounds> each;    ///< net; none where the price has nothing for it
    std::optional<Pounds> amount;  ///< to the penny
    int lines = 0;                 ///< of the bills, that went into it
};

/// What laying asks of one cable of a run.
struct Handling {
    std::string to;     ///< the building its run feeds
    std::string cable;  ///< in words
    std::string cut;    ///< "37 m", "2 pieces of 37 m"
    std::string bend;   ///< smallest radius
    std::string pull;   ///< through ducts; empty where it meets none
};

struct List {
    std::vector<Row> rows;  ///< by group, then by name and size
    std::vector<Handling> handling;
    Pounds amount;  ///< of all rows together: the material lines of the bills
};

/// What hangs on the board at a run's end.
struct Behind {
    std::vector<std::string> feeds = {};  ///< buildings whose runs start there, by name
    double spare_ways = 0;                ///< asked for beyond them and its circuits
    bool gives = false;                   ///< solar or batteries, there or further out
};

/// A run with the bill of what is built for it.
struct RunBill {
    const answer::SchemeAnswer& scheme;
    const site::Run& run;
    const price::Bill& bill;
    Behind behind = {};  ///< list_of() looks for it itself
};

/// Labour and services of the bills are left out.
List list_of(const tables::Catalogue& catalogue, const site::Job& job,
             const std::vector<RunBill>& parts);

/// All runs of a scheme that was worked out from that job.
List list_of(const tables::Catalogue& catalogue, const site::Job& job,
             const answer::SchemeAnswer& scheme);

}  // namespace toft::ware
