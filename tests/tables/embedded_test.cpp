#include "tables/embedded.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>

namespace toft::tables {
namespace {

std::string file_text(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

TEST(Embedded, HoldsEveryTableByteForByte) {
    const std::filesystem::path data = TOFT_SOURCE_DIR "/data";
    int compared = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(data)) {
        if (entry.path().extension() != ".csv") continue;
        const std::string name = std::filesystem::relative(entry.path(), data).string();
        EXPECT_EQ(std::string(embedded_text(name)), file_text(entry.path())) << name;
        ++compared;
    }
    EXPECT_GT(compared, 20);
    EXPECT_EQ(std::string(embedded_text("VERSION")), file_text(data / "VERSION"));
}

TEST(Embedded, HoldsEachNameOnce) {
    const EmbeddedFiles listed = embedded_files();
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < listed.count; ++i) {
        EXPECT_TRUE(names.insert(listed.first[i].name).second) << listed.first[i].name;
    }
}

TEST(Embedded, HasNothingOfAnUnknownName) { EXPECT_TRUE(embedded_text("no/such.csv").empty()); }

}  // namespace
}  // namespace toft::tables
