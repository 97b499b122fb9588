#include "curves/withstand.h"

#include "curves/looking.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::curves {
namespace {

using drawing::Line;

const drawing::Group* only_line(const drawing::Items& items) {
    return picture::find_kind(items, "withstand");
}

TEST(Withstand, ALineFollowsTheLaw) {
    const LogPaper paper = plain_paper();
    const double energy = 115.0 * 115 * 100;  // 10 mm2 of copper in PVC
    const drawing::Items items = withstand_lines(paper, {{"live core, 10 mm²", energy, {}}});
    const drawing::Group* group = only_line(items);
    ASSERT_NE(group, nullptr);
    const Line& line = std::get<Line>(group->items.front().shape);
    EXPECT_NEAR(line.from.x, paper.x(1150 / std::sqrt(5.0)), 1e-9);
    EXPECT_NEAR(line.from.y, paper.y(5), 1e-9);
    EXPECT_NEAR(line.to.x, paper.x(11500), 1e-9);
    EXPECT_NEAR(line.to.y, paper.y(0.01), 1e-9);
    EXPECT_TRUE(picture::says(items, "live core, 10 mm²"));
}

TEST(Withstand, AThickConductorsLineEndsAtThePapersEdge) {
    const LogPaper paper = plain_paper();
    const double energy = 9e7;
    const drawing::Items items = withstand_lines(paper, {{"live core, 95 mm²", energy, {}}});
    const Line& line = std::get<Line>(only_line(items)->items.front().shape);
    EXPECT_NEAR(line.to.x, 900, 1e-9);
    EXPECT_NEAR(line.to.y, paper.y(energy / 4e8), 1e-9);
    EXPECT_EQ(only_line(withstand_lines(paper, {{"x", 1e12, {}}})), nullptr);
    EXPECT_EQ(only_line(withstand_lines(paper, {{"x", 1e-6, {}}})), nullptr);
}

TEST(Withstand, EveryConductorOfThePathIsThere) {
    int cores = 0, separate = 0;
    for (const std::string& name : support::example_names()) {
        for (const answer::SchemeAnswer& s : picture::example(name).answer.schemes) {
            const auto lines = withstands(support::catalogue(), s.scheme);
            std::string all;
            for (std::size_t i = 0; i < lines.size(); ++i) {
                all += lines[i].names + ";";
                if (i > 0) {
                    EXPECT_GE(lines[i].energy, lines[i - 1].energy);
                }
            }
            const study::Protective protective = s.scheme.first().protective;
            EXPECT_NE(all.find("live core"), std::string::npos) << s.key;
            EXPECT_EQ(all.find("armour") != std::string::npos, s.scheme.first().armoured());
            EXPECT_EQ(all.find("protective core") != std::string::npos,
                      study::core_serves(protective));
            EXPECT_EQ(all.find("separate") != std::string::npos,
                      study::separate_serves(protective));
            cores += study::core_serves(protective);
            separate += study::separate_serves(protective);
        }
    }
    EXPECT_GT(cores, 0);
    EXPECT_GT(separate, 0);
}

TEST(Withstand, TheEngineJudgesByTheSameLines) {
    // Where the device's energy at the near end decides, use and line must agree: both hold k2 S2.
    const picture::Example& one = picture::example("demo");
    const auto& scheme = one.answer.schemes.front();
    const auto lines = withstands(support::catalogue(), scheme.scheme);
    const tables::Make& make = tables::make_of(support::catalogue(), *scheme.scheme.first().cable);
    const double k = make.live.k.value.number();
    const double s = scheme.run.live_mm2;
    EXPECT_NEAR(lines.front().energy, k * k * s * s, 1e-6 * k * k * s * s);
}

}  // namespace
}  // namespace toft::curves
