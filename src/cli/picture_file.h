#pragma once
// A picture as the file that was asked for.

#include "base/outcome.h"
#include "drawing/scene.h"
#include "dxf/dxf.h"
#include "print/font.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::cli {

enum class PictureKind { svg, pdf, png, dxf };

/// By the ending of the file's name, in small or capital letters; none for any other ending.
std::optional<PictureKind> kind_of(const std::string& path);

struct PictureFile {
    PictureKind kind = PictureKind::svg;
    int dpi = 200;      ///< of PNG
    bool paper = true;  ///< a PNG is of a whole sheet of paper; false: of the drawing alone
    std::string date;   ///< that PDF names as its day of making; empty for today
    std::optional<dxf::Space> space = {};  ///< of a drawing that is true to scale
};

struct FileContent {
    std::string bytes;
    std::string missing;  ///< characters that the printed picture could not show; mostly empty
};

/// DejaVu Sans from where systems keep it. Fault `font` where it is not.
Outcome<print::Fonts> installed_fonts();

/// The bytes of `scene` as such a file. Reads the font files for PDF and PNG. Fault `not-to-scale`
/// for a DXF of a drawing without a space.
Outcome<FileContent> content_of(const drawing::Scene& scene, const PictureFile& wanted);

}  // namespace toft::cli
