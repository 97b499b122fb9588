#include "digging/cut.h"

#include "digging/measured.h"
#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

namespace toft::digging {
namespace {

/// Words, turned or not, whose letters reach over others'.
std::string covered(const drawing::Items& items) {
    const std::vector<drawing::Text> texts = picture::texts_in(items);
    std::string found;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            if (drawing::overlap(drawing::box_of(texts[i]), drawing::box_of(texts[k]))) {
                found += picture::line_of(texts[i]) + " | " + picture::line_of(texts[k]) + "\n";
            }
        }
    }
    return found;
}

TEST(Cut, SizesAreTheSectionsInMillimetres) {
    const trench::Works works = trench::works_of_example("demo");
    const trench::Section& s = works.trenches[0].section;
    const Cut one = cut(trench::shop().trench, works.trenches[0], {150, 40}, 5);
    std::vector<std::string> figures;
    for (const drawing::Text& text : picture::texts_in(one.items)) {
        figures.push_back(picture::line_of(text));
    }
    for (const Metres size : {s.width, s.depth, s.cover, s.below, s.cover - s.tape}) {
        const std::string wanted = std::to_string(std::lround(1000 * size.number()));
        EXPECT_NE(std::find(figures.begin(), figures.end(), wanted), figures.end()) << wanted;
    }
}

TEST(Cut, EverythingThatLiesThereIsNamedAndKeepsToTheBox) {
    const trench::Works works = trench::works_of_example("tansy-bank");
    for (const trench::Trench& trench : works.trenches) {
        for (const double one_to : {5.0, 10.0, 20.0}) {
            const Cut one = cut(trench::shop().trench, trench, {150, 40}, one_to);
            EXPECT_TRUE(drawing::contains(one.box, drawing::box_of(one.items)));
            EXPECT_EQ(covered(one.items), "");
            std::size_t named = 0;
            for (const Pointed& part : one.parts) {
                EXPECT_TRUE(
                    drawing::contains(one.box, {part.at.x, part.at.y, part.at.x, part.at.y}));
                for (const trench::Lying& thing : trench.lying) {
                    named += part.head == thing.sign + ": " + thing.says;
                }
            }
            EXPECT_EQ(named, trench.lying.size());
        }
    }
}

TEST(Cut, ACableThatIsNotSettledIsSaidToBeSo) {
    const trench::Works works = trench::works_of_job(support::plain_job());
    const Cut one = cut(trench::shop().trench, works.trenches[0], {150, 40}, 10);
    bool said = false;
    for (const Pointed& part : one.parts) said = said || part.says.find("not settled") == 0;
    EXPECT_TRUE(said);
}

}  // namespace
}  // namespace toft::digging
