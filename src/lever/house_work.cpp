#include "lever/ideas.h"

namespace toft::lever {

namespace {

template <class Q>
bool surely_at_least(const site::Fact<Q>& fact, Q value) {
    return fact.known && fact.low >= value;
}

void conductors(const Ground& ground, Changes& all) {
    const site::Intake& in = ground.job.intake;
    const auto bonding = square_millimetres(value_of(ground, "bigger-bonding"));
    if (!surely_at_least(in.main_bonding, bonding)) {
        Change change{"bigger-bonding", "", ground.job};
        change.job.intake.main_bonding = stated(bonding);
        all.push_back(std::move(change));
    }
    const auto earthing = square_millimetres(value_of(ground, "bigger-earthing"));
    if (!surely_at_least(in.earthing_conductor, earthing)) {
        Change change{"bigger-earthing", "", ground.job};
        change.job.intake.earthing_conductor = stated(earthing);
        all.push_back(std::move(change));
    }
}

void board(const Ground& ground, Changes& all) {
    const site::HouseBoard& board = ground.job.intake.board;
    if (!board.behind_rcd.known || board.behind_rcd.high > amperes(0)) {
        Change out{"way-without-rcd", "", ground.job};
        out.job.intake.board.behind_rcd = stated(amperes(0));
        all.push_back(std::move(out));
        const auto delayed = milliamperes(value_of(ground, "delayed-rcd"));
        if (board.behind_rcd.known && board.rcd_delayed != site::Answer::yes) {
            Change change{"delayed-rcd", "", ground.job};
            change.job.intake.board.behind_rcd = stated(delayed);
            change.job.intake.board.rcd_delayed = site::Answer::yes;
            all.push_back(std::move(change));
        }
    }
    if (!surely_at_least(board.spare_ways, 1.0)) {
        Change change{"free-way", "", ground.job};
        change.job.intake.board.spare_ways = stated(1.0);
        all.push_back(std::move(change));
    }
}

}  // namespace

Changes house_work(const Ground& ground) {
    Changes all;
    conductors(ground, all);
    board(ground, all);
    return all;
}

}  // namespace toft::lever
