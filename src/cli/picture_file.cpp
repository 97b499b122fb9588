#include "cli/picture_file.h"

#include "cli/files.h"
#include "drawing/svg.h"
#include "drawing/utf8.h"
#include "print/pdf.h"
#include "print/png.h"

#include <fmt/format.h>

#include <filesystem>

namespace toft::cli {

namespace {

/// Where systems keep DejaVu Sans: Debian, Fedora, Arch and Alpine.
constexpr const char* font_folders[] = {"/usr/share/fonts/truetype/dejavu",
                                        "/usr/share/fonts/dejavu-sans-fonts",
                                        "/usr/share/fonts/TTF", "/usr/share/fonts/dejavu"};

Outcome<print::Printed> printed(const drawing::Scene& scene, const PictureFile& wanted) {
    const auto letters = installed_fonts();
    if (!letters) return failed(letters.error());
    if (wanted.kind == PictureKind::png) {
        return print::to_png(scene, *letters, wanted.dpi,
                             wanted.paper ? print::Ground::a4 : print::Ground::drawing);
    }
    return print::to_pdf(scene, *letters, wanted.date.empty() ? today() : wanted.date);
}

Outcome<FileContent> in_metres(const drawing::Scene& scene, const PictureFile& wanted) {
    if (!wanted.space) {
        return failed({"not-to-scale",
                       "--picture",
                       "a .dxf is in metres, and this picture is not true to scale; route and "
                       "trench are",
                       "",
                       {"route", "trench"}});
    }
    auto text = dxf::to_dxf(scene, *wanted.space);
    if (!text) return failed(text.error());
    return FileContent{std::move(*text), ""};
}

}  // namespace

Outcome<print::Fonts> installed_fonts() {
    for (const char* folder : font_folders) {
        const std::string stem = std::string(folder) + "/DejaVuSans";
        std::error_code error;
        if (!std::filesystem::exists(stem + ".ttf", error)) continue;
        auto normal = read_whole(stem + ".ttf");
        auto bold = read_whole(stem + "-Bold.ttf");
        if (!normal) return failed(normal.error());
        if (!bold) return failed(bold.error());
        return print::open_fonts(std::move(*normal), std::move(*bold));
    }
    return failed({"font",
                   "",
                   "the font DejaVu Sans is not on this machine; install the package "
                   "fonts-dejavu-core, or draw SVG, which needs no font here",
                   "",
                   {}});
}

std::optional<PictureKind> kind_of(const std::string& path) {
    std::string ending = std::filesystem::path(path).extension().string();
    for (char& c : ending) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if (ending == ".svg") return PictureKind::svg;
    if (ending == ".pdf") return PictureKind::pdf;
    if (ending == ".png") return PictureKind::png;
    if (ending == ".dxf") return PictureKind::dxf;
    return std::nullopt;
}

Outcome<FileContent> content_of(const drawing::Scene& scene, const PictureFile& wanted) {
    if (wanted.kind == PictureKind::svg) return FileContent{drawing::to_svg(scene), ""};
    if (wanted.kind == PictureKind::dxf) return in_metres(scene, wanted);
    auto one = printed(scene, wanted);
    if (!one) return failed(one.error());
    return FileContent{std::move(one->bytes), drawing::to_utf8(one->missing)};
}

}  // namespace toft::cli
