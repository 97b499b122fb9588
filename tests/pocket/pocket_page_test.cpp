#include "pocket/pocket_page.h"

#include <gtest/gtest.h>

namespace toft::pocket {
namespace {

constexpr server::PageFile page{"/pocket.html", "text/html", "\"1\"",
                                "<body><!--toft-pocket--><p></body>", ""};
constexpr server::PageFile engine{"/toft.wasm", "application/wasm", "\"2\"", "foobar", "foo"};

TEST(PocketPage, HoldsTheJobAndTheEngineWhereThePageLooksForThem) {
    const server::PageFile files[] = {page, engine};
    EXPECT_EQ(pocket_page({files, 2}, "{}"),
              "<body><script type=\"application/json\" id=\"toft-job\">{\"id\":\"" + id_of("{}") +
                  "\",\"job\":{}}</script>\n"
                  "<script type=\"text/plain\" id=\"toft.wasm.gz\">Zm9v</script>\n<p></body>");
}

TEST(PocketPage, NothingInAJobEndsTheScriptItStandsIn) {
    const server::PageFile files[] = {page, engine};
    const std::string made = pocket_page({files, 2}, R"({"title":"</script><script>"})");
    EXPECT_NE(made.find(R"({"title":"\u003c/script>\u003cscript>"})"), std::string::npos);
}

TEST(PocketPage, IsNotMadeOfABuildWithoutPageOrEngine) {
    EXPECT_EQ(pocket_page({&page, 1}, "{}"), "");
    EXPECT_EQ(pocket_page({&engine, 1}, "{}"), "");
    EXPECT_EQ(pocket_page({}, "{}"), "");
}

TEST(PocketPage, TheSameJobHasTheSameNameAndAnotherAnother) {
    EXPECT_EQ(id_of("a job"), id_of("a job"));
    EXPECT_NE(id_of("a job"), id_of("a jot"));
    EXPECT_EQ(id_of("").size(), 36U);
}

}  // namespace
}  // namespace toft::pocket
