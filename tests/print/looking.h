#pragma once
// The fonts that tests print with, and printed images as numbers.

#include "print/font.h"

#include <fstream>
#include <sstream>
#include <string>

namespace toft::print {

inline std::string font_file(const std::string& name) {
    std::ifstream in("/usr/share/fonts/truetype/dejavu/" + name, std::ios::binary);
    std::ostringstream bytes;
    bytes << in.rdbuf();
    return bytes.str();
}

inline const Fonts& fonts() {
    static const Fonts both =
        open_fonts(font_file("DejaVuSans.ttf"), font_file("DejaVuSans-Bold.ttf")).value();
    return both;
}

}  // namespace toft::print
