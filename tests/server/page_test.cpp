// The page's files: packed, remembered, and never out of date.

#include "server/page.h"

#include "server/page_files.h"

#include <gtest/gtest.h>

namespace toft::server {
namespace {

constexpr PageFile two[] = {
    {"/index.html", "text/html; charset=utf-8", "\"abc\"", "the page", "packed page"},
    {"/page/a-1234.js", "text/javascript", "\"def\"", "script", ""},
};
constexpr PageFiles files{two, 2};

std::string value_of(const Response& response, const std::string& name) {
    for (const auto& [key, value] : response.headers) {
        if (key == name) return value;
    }
    return "";
}

TEST(Page, IsSentPackedToWhoTakesThat) {
    Headers headers;
    EXPECT_EQ(page_file(files, "/", headers).lasting, "the page");
    headers.accept_encoding = "gzip, deflate, br";
    const Response packed = page_file(files, "/", headers);
    EXPECT_EQ(packed.lasting, "packed page");
    EXPECT_EQ(value_of(packed, "Content-Encoding"), "gzip");
    EXPECT_EQ(value_of(packed, "Vary"), "Accept-Encoding");
    EXPECT_EQ(page_file(files, "/page/a-1234.js", headers).lasting, "script") << "not packed";
}

TEST(Page, IsNotSentAgainToWhoHasIt) {
    Headers headers;
    headers.if_none_match = "\"other\", W/\"abc\"";
    const Response known = page_file(files, "/index.html", headers);
    EXPECT_EQ(known.status, 304u);
    EXPECT_EQ(known.lasting, "");
    headers.if_none_match = "\"other\"";
    EXPECT_EQ(page_file(files, "/index.html", headers).status, 200u);
}

TEST(Page, OnlyNamesThatCarryADigestAreKeptWithoutAsking) {
    EXPECT_EQ(value_of(page_file(files, "/", {}), "Cache-Control"), "no-cache");
    EXPECT_NE(value_of(page_file(files, "/page/a-1234.js", {}), "Cache-Control").find("immutable"),
              std::string::npos);
    EXPECT_EQ(page_file(files, "/page/", {}).status, 404u);
}

TEST(Page, TheOneThatIsCarriedBeginsWithAnIndex) {
    EXPECT_EQ(page_file(page_files(), "/", {}).status, 200u);
    std::string_view last;
    for (const PageFile& file : page_files()) {
        EXPECT_LT(last, file.path) << "sorted, each once";
        EXPECT_EQ(file.path.front(), '/');
        EXPECT_EQ(file.etag.front(), '"');
        last = file.path;
    }
}

}  // namespace
}  // namespace toft::server
