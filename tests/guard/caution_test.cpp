#include "guard/caution.h"

#include "guard/guarding.h"

namespace toft::guard {
namespace {

using site::Answer;
using site::CircuitKind;
using site::RcdType;

std::string said(const site::Job& job, const study::RunScheme& scheme, double behind_ma = 0) {
    const View v = view(job);
    const Cautions cautions = cautions_of(v, chain_of(v, scheme, milliamperes(behind_ma)));
    std::string all;
    for (std::size_t i = 0; i < cautions.count; ++i) all += std::string(cautions.says[i]) + "\n";
    return all;
}

bool says(const std::string& all, const char* words) {
    return all.find(words) != std::string::npos;
}

site::Job sockets_behind(RcdType type, Answer delayed = Answer::no) {
    site::Job job = job_with({circuit(CircuitKind::socket_radial, "sockets")});
    job.intake.board.behind_rcd = measured(milliamperes(30));
    job.intake.board.rcd_delayed = delayed;
    job.intake.board.rcd_type = type;
    return job;
}

TEST(Caution, AFuseOnTheTailsOrADelayedRcdThereLeavesNothingToSay) {
    const site::Job job = job_with({circuit(CircuitKind::socket_radial)});
    EXPECT_EQ(said(job, on_tails()), "");
    EXPECT_EQ(said(job, behind_delayed(on_tails())), "");
}

TEST(Caution, ARunBehindTheHousesThirtyHangsOnIt) {
    EXPECT_TRUE(says(said(sockets_behind(RcdType::a), in_the_board(), 30), "hang on the house"));
}

TEST(Caution, AFreezerIsNamedWhereItIsLostUnseen) {
    site::Job job = sockets_behind(RcdType::a);
    job.buildings[1].circuits.push_back(circuit(CircuitKind::freezer));
    EXPECT_TRUE(says(said(job, in_the_board(), 30), "takes the freezer"));
    EXPECT_TRUE(says(said(job, by_rcbo()), "freezer goes dark"));
    EXPECT_EQ(said(job, on_tails()), "");
}

TEST(Caution, ADelayedHundredOfTheHouseStillLosesTheHouseByTheRun) {
    const std::string all = said(sockets_behind(RcdType::a, Answer::yes), in_the_board(), 100);
    EXPECT_TRUE(says(all, "fault on the run"));
    EXPECT_FALSE(says(all, "either device may act"));
}

TEST(Caution, ABlindedDeviceIsTheFirstThingSaid) {
    site::Job job = sockets_behind(RcdType::a);
    job.buildings[1].circuits.push_back(circuit(CircuitKind::heat_pump));
    EXPECT_EQ(said(job, in_the_board(), 30).find("the RCD of the house's board is of a type"), 0u);
    EXPECT_TRUE(says(said(sockets_behind(RcdType::ac), in_the_board(), 30), "type AC"));
    job.buildings[1].circuits.back() = circuit(CircuitKind::vehicle_charging);
    EXPECT_TRUE(says(said(job, in_the_board(), 30), "unless the charging point detects"));
    EXPECT_FALSE(says(said(job, on_tails()), "blind"));
}

TEST(Caution, ATypeThatNobodyReadIsSaid) {
    site::Job job = sockets_behind(RcdType::a);
    job.intake.board.rcd_type.reset();
    EXPECT_TRUE(says(said(job, in_the_board(), 30), "nobody read the type"));
}

TEST(Caution, LeakageOverThirtyPerCentIsSaidInFrontAndInTheCircuit) {
    std::vector<site::Circuit> many(3, circuit(CircuitKind::socket_ring));
    const site::Job job = job_with(many);
    EXPECT_TRUE(says(said(job, by_rcbo()), "rating of an RCD in front"));
    EXPECT_FALSE(says(said(job, behind_delayed(on_tails())), "30 %"));
    many[0].leakage = measured(milliamperes(12));
    const site::Job leaky = job_with(many);
    EXPECT_TRUE(says(said(leaky, on_tails()), "30 % of its 30 mA"));
}

/// Fed from another building, behind a device at the head of a run before.
std::string said_behind(const site::Job& job, const study::RunScheme& scheme, double before_ma,
                        bool delayed) {
    View v = view(job);
    v.at_house = false;
    if (before_ma > 0) {
        study::HeadResidual before;
        before.sensitivity = milliamperes(before_ma);
        before.delayed = delayed;
        v.before = before;
    }
    const Cautions cautions = cautions_of(v, chain_of(v, scheme, milliamperes(30)));
    std::string all;
    for (std::size_t i = 0; i < cautions.count; ++i) all += std::string(cautions.says[i]) + "\n";
    return all;
}

TEST(Caution, ADeviceAtARunBeforeMayTakeAllBehindItUnlessItIsSureToWait) {
    const site::Job job = job_with({circuit(CircuitKind::lighting)});
    const char* all_dark = "every building behind that one goes dark";
    EXPECT_TRUE(says(said_behind(job, in_the_board(), 30, false), all_dark));
    EXPECT_TRUE(says(said_behind(job, in_the_board(), 30, true), all_dark)) << "too near in rating";
    EXPECT_EQ(said_behind(job, in_the_board(), 100, true), "");
    EXPECT_EQ(said_behind(job, in_the_board(), 0, false), "") << "the house's is not in its row";
}

TEST(Caution, BehindOtherRunsNobodyIsSentToTheHouse) {
    site::Job job = job_with({circuit(CircuitKind::lighting)});
    EXPECT_TRUE(says(said(job, by_rcbo()), "walks to the house"));
    const std::string behind = said_behind(job, by_rcbo(), 0, false);
    EXPECT_TRUE(says(behind, "walks to the board that feeds it")) << behind;
    EXPECT_FALSE(says(behind, "house"));
    job.buildings[1].circuits.push_back(circuit(CircuitKind::freezer));
    EXPECT_TRUE(says(said_behind(job, by_rcbo(), 0, false), "the freezer goes dark"));
    EXPECT_FALSE(says(said_behind(job, by_rcbo(), 0, false), "house"));
}

TEST(Caution, TheWorstJobStillFits) {
    site::Job job = sockets_behind(RcdType::ac);
    for (int i = 0; i < 9; ++i) job.buildings[1].circuits.push_back(circuit(CircuitKind::battery));
    job.buildings[1].circuits.push_back(circuit(CircuitKind::freezer));
    auto scheme = by_rcbo();
    scheme.fed_from = site::FedFrom::spare_way;
    const View v = view(job);
    const Chain c = chain_of(v, scheme, milliamperes(30));
    EXPECT_LE(cautions_of(v, c).count, cautions_of(v, c).says.size());
    EXPECT_GE(cautions_of(v, c).count, 4u);
}

}  // namespace
}  // namespace toft::guard
