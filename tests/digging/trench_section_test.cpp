#include "digging/trench_section.h"

#include "digging/reading.h"
#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

namespace toft::digging {
namespace {

TEST(TrenchSection, NoWordCoversAnotherAtAnyWidth) {
    for (const char* name : {"demo", "hurdle-farm-yard", "tansy-bank", "three-facts"}) {
        const trench::Works works = trench::works_of_example(name);
        for (const double width : {0.0, 320.0, 500.0, 1400.0}) {
            const Measured one = trench_sheet(trench::shop().trench, works, {width, true});
            EXPECT_EQ(picture::clashes(one.scene.items, sheet_of(one.scene)), "")
                << name << " " << width;
        }
        for (std::size_t i = 0; i < works.sorts.size(); ++i) {
            const Measured one = trench_section(trench::shop().trench, works, i, paper_wide);
            EXPECT_EQ(picture::clashes(one.scene.items, sheet_of(one.scene)), "") << name;
        }
    }
}

TEST(TrenchSection, EachSortIsNamedWithWhatIsOverIt) {
    const trench::Works works = trench::works_of_example("tansy-bank");
    ASSERT_EQ(works.sorts.size(), 3u);
    const std::string words = all_words(trench_sheet(trench::shop().trench, works, {}).scene);
    EXPECT_NE(words.find("Trench of A2: drive"), std::string::npos);
    EXPECT_EQ(sort_words(works, works.sorts[0]),
              "Trench of A2: drive, 0.6 m over the cable, 19 m long");
}

TEST(TrenchSection, WhereNothingIsDugTheSheetSaysHowLegsAreFixed) {
    site::Job job = support::job_with_legs({support::plain_leg(site::LegMethod::clipped, 7),
                                            support::plain_leg(site::LegMethod::overhead, 12)});
    const trench::Works works = trench::works_of_job(job);
    const std::string words = all_words(trench_sheet(trench::shop().trench, works, {}).scene);
    EXPECT_NE(words.find("Nothing is dug"), std::string::npos);
    EXPECT_NE(words.find("catenary wire"), std::string::npos);
    EXPECT_EQ(words.find("Scale"), std::string::npos);
}

TEST(TrenchSection, AllSectionsOfASheetHaveOneScale) {
    const trench::Works works = trench::works_of_example("hurdle-farm-yard");
    const double one_to = trench_section(trench::shop().trench, works, 0, paper_wide).one_to;
    for (std::size_t i = 1; i < works.sorts.size(); ++i) {
        EXPECT_EQ(trench_section(trench::shop().trench, works, i, paper_wide).one_to, one_to);
    }
}

}  // namespace
}  // namespace toft::digging
