#include "drawing/well_formed.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

TEST(WellFormed, TakesWhatIsRight) {
    for (const char* right :
         {"<a/>", "<a b=\"1\" c=\"&lt;\">x &amp; y<d/></a>\n", "<a><b>Ω</b></a>"}) {
        EXPECT_EQ(WellFormed::fault_of(right), "") << right;
    }
}

TEST(WellFormed, RefusesWhatIsWrong) {
    for (const char* wrong : {"", "x", "<a>", "<a></b>", "<a><b></a></b>", "<a/><b/>", "<a b=1/>",
                              "<a b=\"1\" b=\"2\"/>", "<a b=\"<\"/>", "<a>&</a>", "<a>& b;</a>",
                              "<a>&nbsp;</a>", "<a>]]></a>", "<a>\x01</a>", "<a b=\"1/>"}) {
        EXPECT_NE(WellFormed::fault_of(wrong), "") << wrong;
    }
}

}  // namespace
}  // namespace toft::drawing
