#include "door/code_picture.h"

#include <fmt/format.h>
#include <qrencode.h>

#include <memory>

namespace toft::server {

namespace {

constexpr int margin = 4;  // modules, as ISO/IEC 18004 asks

class Modules {
public:
    explicit Modules(const std::string& text)
        : code_(QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M), QRcode_free) {}

    int width() const { return code_ ? code_->width + 2 * margin : 0; }
    bool dark(int x, int y) const {
        const int column = x - margin;
        const int row = y - margin;
        if (column < 0 || row < 0 || column >= code_->width || row >= code_->width) return false;
        return code_->data[row * code_->width + column] & 1;
    }

private:
    std::unique_ptr<QRcode, void (*)(QRcode*)> code_;
};

}  // namespace

std::string code_for_terminal(const std::string& text) {
    const Modules modules(text);
    std::string drawn;
    for (int y = 0; y < modules.width(); y += 2) {
        drawn += "\033[30;107m";  // black on white, whatever the terminal's colours
        for (int x = 0; x < modules.width(); ++x) {
            const bool below = y + 1 < modules.width() && modules.dark(x, y + 1);
            drawn += modules.dark(x, y) ? (below ? "█" : "▀") : (below ? "▄" : " ");
        }
        drawn += "\033[0m\n";
    }
    return drawn;
}

std::string code_as_svg(const std::string& text) {
    const Modules modules(text);
    std::string path;
    for (int y = 0; y < modules.width(); ++y) {
        for (int x = 0; x < modules.width(); ++x) {
            if (modules.dark(x, y)) path += fmt::format("M{} {}h1v1h-1z", x, y);
        }
    }
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0} {0}\" role=\"img\" "
        "aria-label=\"The address as a picture for a camera\"><path fill=\"#fff\" "
        "d=\"M0 0h{0}v{0}H0z\"/><path d=\"{1}\"/></svg>",
        modules.width(), path);
}

}  // namespace toft::server
