// The place as a householder knows it.

#include "client/client_picture.h"

#include "paper/users_sheet.h"
#include "paper/written.h"

namespace toft::paper {
namespace {

TEST(ClientPicture, HoldsNoWordsButNamesAndNumbers) {
    const auto pictures = client_pictures(subject_of(picture::example("demo")));
    ASSERT_EQ(pictures.size(), 1u);
    EXPECT_EQ(picture::words_in(pictures.front().scene.items), "House\nPotter's studio\n1\n2\n3\n");
}

TEST(ClientPicture, TellsEveryLegWithItsLengthAndDepth) {
    const auto& one = picture::example("demo");
    const auto pictures = client_pictures(subject_of(one));
    for (const site::Leg& leg : one.job.runs.front().legs) {
        EXPECT_NE(pictures.front().legs.find(leg_plain(leg)), std::string::npos);
    }
    EXPECT_NE(pictures.front().legs.find("2: 21 m buried, 0.6 m deep"), std::string::npos);
}

TEST(ClientPicture, DrawsThePlaceWhereNothingIsSound) {
    const auto pictures = client_pictures(subject_of(picture::example("caravan-no-scheme")));
    ASSERT_EQ(pictures.size(), 1u);
    EXPECT_GT(pictures.front().scene.height, 100);
}

TEST(ClientPicture, OfATreeOnlyRunsFromTheHouseAreDrawn) {
    const auto& one = picture::example("garage-gym-stable");
    EXPECT_EQ(client_pictures(subject_of(one)).size(), 1u);
}

TEST(ClientPicture, LongNamesDoNotMeet) {
    for (const std::string& name : hard_names()) {
        const auto one = renamed("demo", name);
        for (const ClientPicture& each : client_pictures(subject_of(one))) {
            const drawing::Box sheet{0, 0, each.scene.width, each.scene.height};
            EXPECT_EQ(picture::clashes(each.scene.items, sheet), "") << name;
        }
    }
}

}  // namespace
}  // namespace toft::paper
