// toft draw to paper: the PDF and the PNG show what the SVG shows. Judged by poppler and librsvg,
// which share no code with our own printing.

#include "cli/program.h"
#include "gallery/pictures.h"
#include "print/image.h"
#include "print/sheet.h"
#include "support/examples.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace toft::cli {
namespace {

class Print : public ::testing::Test {
protected:
    /// What a command of the shell prints, run in the program's folder.
    std::string shell(const std::string& command) const {
        const std::string whole =
            "cd " + program_.folder().string() + " && " + command + " >said.tmp";
        EXPECT_EQ(std::system(whole.c_str()), 0) << command;
        return text_of(program_.folder() / "said.tmp");
    }

    void draw(const std::string& job, const std::string& file, std::vector<std::string> more = {}) {
        std::vector<std::string> words = {"draw", example(job), "-o", file};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = program_.run(words);
        EXPECT_TRUE(ran.code == 0 || ran.code == 1 || ran.code == 5) << ran.error;
        EXPECT_EQ(ran.error, "picture: " + file + "\n");
    }

    Program program_;
};

TEST_F(Print, WordsOfThePdfCanBeCopiedAndItsFontsTravelWithIt) {
    draw("demo", "it.pdf");
    const std::string words = shell("pdftotext -layout it.pdf -");
    for (const char* wanted : {"Potter's studio, Wrensnest, Ashlow Green", "Ze 0.21 Ω",
                               "3-core 10 mm²", "A competent, licensed person"}) {
        EXPECT_NE(words.find(wanted), std::string::npos) << wanted;
    }
    const std::string fonts = shell("pdffonts it.pdf | tail -n +3");
    std::istringstream lines(fonts);
    int count = 0;
    for (std::string line; std::getline(lines, line); ++count) {
        EXPECT_NE(line.find("+DejaVuSans"), std::string::npos) << line;
        EXPECT_NE(line.find(" yes yes yes "), std::string::npos) << "embedded, in part, readable";
    }
    EXPECT_GE(count, 2);
    EXPECT_EQ(shell("pdfimages -list it.pdf | tail -n +3"), "") << "no pixels";
}

TEST_F(Print, EveryPictureOfEveryExampleIsOnePageWithoutUnknownLetters) {
    for (const std::string& name : support::example_names()) {
        for (const gallery::Picture& one : gallery::pictures()) {
            draw(name, "it.pdf", {"--picture", one.name});
            const std::string info = shell("pdfinfo it.pdf");
            EXPECT_NE(info.find("Pages:           1\n"), std::string::npos) << name;
            EXPECT_NE(info.find("(A4)"), std::string::npos) << name;
            EXPECT_EQ(shell("pdftotext it.pdf -").find("\uFFFD"), std::string::npos) << name;
        }
    }
}

TEST_F(Print, TheSameDayGivesTheSameBytes) {
    draw("demo", "one.pdf", {"--date", "2026-11-25"});
    draw("demo", "two.pdf", {"--date", "2026-11-25"});
    EXPECT_EQ(text_of(program_.folder() / "one.pdf"), text_of(program_.folder() / "two.pdf"));
    EXPECT_NE(shell("pdfinfo -rawdates one.pdf").find("20261125000000Z"), std::string::npos);
    const Ran wrong = program_.run({"draw", example("demo"), "-o", "it.pdf", "--date", "soon"});
    EXPECT_EQ(wrong.code, 2);
    EXPECT_NE(wrong.error.find("\"soon\" is no date"), std::string::npos);
}

TEST_F(Print, DotsAnInchAreHeeded) {
    draw("demo", "IT.PNG", {"--dpi", "72"});
    EXPECT_NE(shell("od -An -tu1 -j16 -N8 IT.PNG").find("0   0   3  74   0   0   2  83"),
              std::string::npos)
        << "842 by 595 dots";
    for (const char* dpi : {"71", "601", "many"}) {
        EXPECT_EQ(program_.run({"draw", example("demo"), "-o", "it.png", "--dpi", dpi}).code, 4);
    }
}

TEST_F(Print, APngOfAWidthIsTheDrawingAlone) {
    draw("demo", "it.png", {"--dpi", "96", "--width", "360"});
    EXPECT_NE(shell("od -An -tu1 -j16 -N4 it.png").find("0   0   1 104"), std::string::npos)
        << "360 dots wide";
}

TEST_F(Print, ANameTheFontLacksIsSaid) {
    auto job = nlohmann::ordered_json::parse(text_of(example("demo")));
    job["title"] = "Shed \xF0\x9F\x94\x8C";
    for (const char* file : {"it.pdf", "it.png"}) {
        const Ran ran = program_.run({"draw", "-", "-o", file}, job.dump());
        EXPECT_EQ(ran.code, 0);
        EXPECT_NE(ran.error.find("no letters for \xF0\x9F\x94\x8C"), std::string::npos);
    }
}

/// Paints a PNG file over the image, its upper left corner at `x`, `y`, made `scale` times as
/// large.
void paint_file(print::Image& image, const std::filesystem::path& file, double scale, double x,
                double y) {
    const print::Surface png(cairo_image_surface_create_from_png(file.c_str()));
    ASSERT_EQ(cairo_surface_status(png.get()), CAIRO_STATUS_SUCCESS);
    cairo_translate(image.pen(), x, y);
    cairo_scale(image.pen(), scale, scale);
    cairo_set_source_surface(image.pen(), png.get(), 0, 0);
    cairo_paint(image.pen());
}

/// Mean darkness of a block of dots, 0 to 1, by the green of them.
double darkness(const print::Image& image, int left, int top, int size) {
    double sum = 0;
    for (int y = top; y < top + size; ++y) {
        for (int x = left; x < left + size; ++x) sum += 255.0 - ((image.at(x, y) >> 8) & 0xFF);
    }
    return sum / (255.0 * size * size);
}

TEST_F(Print, ThePngShowsWhatTheSvgShows) {
    constexpr int wide = 1169, high = 827, block = 20;  // A4 at 100 dots an inch
    for (const std::string& name : support::example_names()) {
        draw(name, "it.svg");
        draw(name, "it.png", {"--dpi", "100"});
        shell("rsvg-convert -w 1400 it.svg -o other.png");
        print::Image ours(wide, high), theirs(wide, high);
        paint_file(ours, program_.folder() / "it.png", 1, 0, 0);
        const print::Sheet sheet = print::sheet_for(1400, 990).value();
        const double dots = 100 / 25.4;
        paint_file(theirs, program_.folder() / "other.png", sheet.scale * 100 / 96,
                   sheet.corner.x * dots, sheet.corner.y * dots);
        int differ = 0, inked = 0, blocks = 0;
        for (int y = 0; y + block <= high; y += block) {
            for (int x = 0; x + block <= wide; x += block) {
                const double a = darkness(ours, x, y, block);
                differ += std::fabs(a - darkness(theirs, x, y, block)) > 0.08;
                inked += a > 0.05;
                ++blocks;
            }
        }
        EXPECT_LE(differ, 2) << name;  // letters that kern stand a little to the left
        EXPECT_GT(inked, blocks / 10) << name;
    }
}

}  // namespace
}  // namespace toft::cli
