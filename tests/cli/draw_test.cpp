// toft draw: the picture goes to standard output or to a file.

#include "cli/program.h"
#include "drawing/well_formed.h"
#include "gallery/pictures.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

class Draw : public ::testing::Test {
protected:
    static std::string fault_of(const std::string& svg) {
        return drawing::WellFormed::fault_of(svg);
    }

    Program program_;
};

TEST_F(Draw, ThePictureIsPrintedOrWritten) {
    const Ran printed = program_.run({"draw", example("demo")});
    EXPECT_EQ(printed.code, 0);
    EXPECT_EQ(printed.error, "");
    EXPECT_EQ(fault_of(printed.out), "");
    const Ran written = program_.run({"draw", example("demo"), "-o", "new/folder/it.svg"});
    EXPECT_EQ(written.code, 0);
    EXPECT_EQ(written.out, "");
    EXPECT_EQ(written.error, "picture: new/folder/it.svg\n");
    EXPECT_EQ(text_of(program_.folder() / "new/folder/it.svg"), printed.out);
}

TEST_F(Draw, WhereItCannotBeWrittenThatIsSaid) {
    program_.file("file", "");
    std::filesystem::create_directory(program_.folder() / "folder.svg");
    for (const char* path : {"file/it.svg", "/proc/no-such/it.svg", "folder.svg"}) {
        const Ran ran = program_.run({"draw", example("demo"), "-o", path});
        EXPECT_EQ(ran.code, 2) << path;
        EXPECT_NE(ran.error.find(std::string(path) + " cannot be written"), std::string::npos);
    }
}

TEST_F(Draw, AnUnknownEndingIsWrongUsage) {
    for (const char* path : {"it.jpg", "it", ".", ".svg", "it.svg.gz", "pdf"}) {
        const Ran ran = program_.run({"draw", example("demo"), "-o", path});
        EXPECT_EQ(ran.code, 4) << path;
        EXPECT_NE(ran.error.find(std::string(path) + ": the ending"), std::string::npos);
        EXPECT_NE(ran.error.find(".svg, .pdf, .png or .dxf"), std::string::npos);
        EXPECT_TRUE(path == std::string(".") || !std::filesystem::exists(program_.folder() / path));
    }
}

TEST_F(Draw, EachPictureIsReachedByItsName) {
    std::string last = program_.run({"draw", example("demo")}).out;
    EXPECT_EQ(program_.run({"draw", example("demo"), "--picture", "place"}).out, last);
    for (const gallery::Picture& one : gallery::pictures()) {
        const Ran ran = program_.run({"draw", example("demo"), "--picture", one.name});
        EXPECT_EQ(ran.code, 0) << one.name;
        EXPECT_EQ(fault_of(ran.out), "") << one.name;
        EXPECT_EQ(ran.out == last, one.name == std::string("place"));
    }
    EXPECT_EQ(program_.run({"draw", example("demo"), "--picture", "ghost"}).code, 4);
}

TEST_F(Draw, EachSchemeOfTheListHasItsOwn) {
    const Ran first = program_.run({"draw", example("demo")});
    const Ran second = program_.run({"draw", example("demo"), "--rank", "2"});
    EXPECT_EQ(second.code, 0);
    EXPECT_EQ(fault_of(second.out), "");
    EXPECT_NE(first.out, second.out);
    const Ran none = program_.run({"draw", example("demo"), "--rank", "1000"});
    EXPECT_EQ(none.code, 2);
    EXPECT_NE(none.error.find("schemes"), std::string::npos);
    EXPECT_EQ(none.out, "");
}

TEST_F(Draw, AWidthIsHeededAndAPdfStaysOnPaper) {
    for (const gallery::Picture& one : gallery::pictures()) {
        const Ran ran =
            program_.run({"draw", example("demo"), "--picture", one.name, "--width", "360"});
        EXPECT_EQ(ran.code, 0) << one.name;
        EXPECT_EQ(fault_of(ran.out), "") << one.name;
        EXPECT_NE(ran.out.find("viewBox=\"0 0 360 "), std::string::npos) << one.name;
    }
    const Ran pdf = program_.run({"draw", example("demo"), "--width", "360", "-o", "it.pdf"});
    EXPECT_EQ(pdf.code, 4);
    EXPECT_NE(pdf.error.find("--width"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(program_.folder() / "it.pdf"));
    for (const char* width : {"319", "1401", "0", "wide"}) {
        EXPECT_EQ(program_.run({"draw", example("demo"), "--width", width}).code, 4) << width;
    }
}

TEST_F(Draw, ADxfIsInMetresAndOnlyOfPicturesTrueToScale) {
    for (const gallery::Picture& one : gallery::pictures()) {
        const Ran ran =
            program_.run({"draw", example("demo"), "--picture", one.name, "-o", "it.dxf"});
        const auto path = program_.folder() / "it.dxf";
        EXPECT_EQ(std::filesystem::exists(path), one.to_scale != nullptr) << one.name;
        EXPECT_EQ(ran.code, one.to_scale ? 0 : 2) << one.name;
        if (!one.to_scale) {
            EXPECT_NE(ran.error.find("not true to scale"), std::string::npos) << one.name;
            continue;
        }
        EXPECT_NE(text_of(path).find("AC1009"), std::string::npos) << one.name;
        std::filesystem::remove(path);
    }
    const Ran wide = program_.run(
        {"draw", example("demo"), "--picture", "route", "--width", "400", "-o", "it.dxf"});
    EXPECT_EQ(wide.code, 4);
}

TEST_F(Draw, APlanShowsAllRunsAndTakesNone) {
    const Ran all = program_.run({"draw", example("hurdle-farm-yard"), "--picture", "route"});
    EXPECT_NE(all.out.find("Pump house"), std::string::npos);
    EXPECT_NE(all.out.find("Hen house"), std::string::npos);
    const Ran one = program_.run(
        {"draw", example("hurdle-farm-yard"), "--picture", "route", "--run", "pump-feed"});
    EXPECT_EQ(one.code, 4);
    EXPECT_NE(one.error.find("all runs of the place"), std::string::npos);
}

TEST_F(Draw, APairIsNamedInPlainWords) {
    const Ran usual = program_.run({"draw", example("demo"), "--picture", "pair"});
    EXPECT_EQ(usual.code, 0);
    EXPECT_EQ(fault_of(usual.out), "");
    EXPECT_NE(usual.out.find("BS 88-3 80 A"), std::string::npos);
    const Ran named = program_.run({"draw", example("demo"), "--picture", "pair", "--upstream",
                                    "100 a bs 88-3 fuse", "--downstream", "b16 rcbo"});
    EXPECT_EQ(named.code, 0);
    EXPECT_NE(named.out.find("BS 88-3 100 A"), std::string::npos);
    EXPECT_NE(named.out.find("B 16 A RCBO"), std::string::npos);
}

TEST_F(Draw, ADeviceThatIsNotThereIsNotDrawn) {
    const Ran none =
        program_.run({"draw", example("demo"), "--picture", "pair", "--downstream", "B 33 A RCBO"});
    EXPECT_NE(none.code, 0);
    EXPECT_EQ(none.out, "");
    EXPECT_NE(none.error.find("B 32 A RCBO"), std::string::npos);
    EXPECT_EQ(program_.run({"draw", example("demo"), "--upstream", "BS 88-3 80 A"}).code, 4);
}

TEST_F(Draw, WithoutASoundSchemeThereIsStillAPicture) {
    auto job = nlohmann::ordered_json::parse(text_of(example("demo")));
    job["runs"][0]["legs"][1]["length_m"] = 4000;
    const Ran ran = program_.run({"draw", "-"}, job.dump());
    EXPECT_EQ(ran.code, 1);
    EXPECT_EQ(fault_of(ran.out), "");
}

TEST_F(Draw, HostileNamesAreHarmless) {
    auto job = nlohmann::ordered_json::parse(text_of(example("demo")));
    const std::string hostile = "</svg><script>x</script>\"'&\xf0\x9f\x94\x8c";
    job["title"] = hostile;
    job["buildings"][1]["name"] = hostile + std::string(140, 'W');
    job["buildings"][1]["id"] = hostile;
    job["runs"][0]["to"] = hostile;
    const Ran ran = program_.run({"draw", "-"}, job.dump());
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(fault_of(ran.out), "");
    EXPECT_EQ(ran.out.find("<script"), std::string::npos);
}

TEST_F(Draw, AJobAtFaultIsNotDrawn) {
    const Ran ran = program_.run({"draw", "-", "-o", "it.svg"}, "{}");
    EXPECT_EQ(ran.code, 2);
    EXPECT_FALSE(std::filesystem::exists(program_.folder() / "it.svg"));
}

}  // namespace
}  // namespace toft::cli
