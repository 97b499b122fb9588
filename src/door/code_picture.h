#pragma once
// Text as a QR code (ISO/IEC 18004), for a phone's camera.

#include <string>

namespace toft::server {

/// Two rows of the picture a line, with half blocks, dark on the terminal's light; with its margin.
std::string code_for_terminal(const std::string& text);

/// The same as an SVG document.
std::string code_as_svg(const std::string& text);

}  // namespace toft::server
