#pragma once
// Group codes and values, one after another, as the file lists them.

#include "drawing/geometry.h"

#include <fmt/format.h>

#include <cmath>
#include <string>
#include <string_view>

namespace toft::dxf {

class Groups {
public:
    void word(int code, std::string_view value) {
        out_ += fmt::format("{:>3}\r\n{}\r\n", code, value);
    }
    void whole(int code, int value) { word(code, fmt::format("{:6}", value)); }
    /// To a millionth; never "-0".
    void number(int code, double value) {
        const double rounded = std::round(value * 1e6) / 1e6;
        word(code, fmt::format("{:.6f}", rounded == 0 ? 0.0 : rounded));
    }
    /// Codes 10 and 20 for `code` 10, 11 and 21 for 11.
    void point(int code, drawing::Point p) {
        number(code, p.x);
        number(code + 10, p.y);
    }

    std::string take() { return std::move(out_); }
    void append(std::string_view more) { out_ += more; }

private:
    std::string out_;
};

}  // namespace toft::dxf
