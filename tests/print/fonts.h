#pragma once
// The fonts that drawings are measured with, from where Debian keeps them. Header only, so that the
// benches may use it too.

#include "print/font.h"

#include <fstream>
#include <iterator>
#include <string>

namespace toft::support {

inline std::string font_file(const std::string& name) {
    std::ifstream in("/usr/share/fonts/truetype/dejavu/" + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

inline const print::Fonts& fonts() {
    static const print::Fonts both =
        print::open_fonts(font_file("DejaVuSans.ttf"), font_file("DejaVuSans-Bold.ttf")).value();
    return both;
}

}  // namespace toft::support
