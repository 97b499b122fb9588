#include "support/elements.h"

#include <fmt/format.h>

#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace toft::support {

namespace {

constexpr double two_pi = 6.28318530717958648;
constexpr double far = 1000;   ///< radius of the ground that is meshed
constexpr double edge = 1e-5;  ///< width of a box round an edge
constexpr int first_layer = 201;

std::string text_of(const std::filesystem::path& file) {
    std::ifstream in(file);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

void run(const std::string& command, const std::filesystem::path& log) {
    if (std::system((command + " >" + log.string() + " 2>&1").c_str()) != 0) {
        throw std::runtime_error(command + " failed; it said:\n" + text_of(log).substr(0, 2000));
    }
}

/// The last figure of each line.
std::vector<double> last_figures(const std::string& text) {
    std::vector<double> figures;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        std::string last;
        for (std::string word; words >> word;) last = word;
        if (!last.empty()) figures.push_back(std::strtod(last.c_str(), nullptr));
    }
    return figures;
}

/// A box that holds just what lies between two corners.
std::string box(double left, double bottom, double right, double top) {
    return fmt::format("BoundingBox{{{}, {}, {}, {}, {}, {}}}", left - edge, bottom - edge, -edge,
                       right + edge, top + edge, edge);
}

constexpr const char* problem_text = R"(
Jacobian { { Name J; Case { { Region Outer; Jacobian SurAxi; }
                            { Region All; Jacobian VolAxi; } } } }
Integration { { Name G; Case { { Type Gauss; Case {
    { GeoElement Line; NumberOfPoints 4; } { GeoElement Triangle; NumberOfPoints 6; } } } } } }
FunctionSpace { { Name S; Type Form0;
  BasisFunction {
    { Name sn; NameOfCoef vn; Function BF_Node; Support All_;
      Entity NodesOf[All, Not Electrodes]; }
    { Name se; NameOfCoef ve; Function BF_Node_2E; Support All_;
      Entity EdgesOf[All, Not Electrodes]; }
    { Name sf; NameOfCoef vf; Function BF_GroupOfNodes; Support All_;
      Entity GroupsOfNodesOf[Electrodes]; } }
  GlobalQuantity { { Name U; Type AliasOf; NameOfCoef vf; }
                   { Name I; Type AssociatedWith; NameOfCoef vf; } }
  Constraint { { NameOfCoef I; EntityType GroupsOfNodesOf; NameOfConstraint Current; } } } }
Formulation { { Name F; Type FemEquation;
  Quantity { { Name v; Type Local; NameOfSpace S; }
             { Name U; Type Global; NameOfSpace S[U]; }
             { Name I; Type Global; NameOfSpace S[I]; } }
  Equation {
    Galerkin { [sigma[] * Dof{d v}, {d v}]; In Soil; Jacobian J; Integration G; }
    Galerkin { [leak[] * Dof{v}, {v}]; In Outer; Jacobian J; Integration G; }
    GlobalTerm { [-Dof{I}, {U}]; In Electrodes; } } } }
Resolution { { Name R; System { { Name A; NameOfFormulation F; } }
  Operation { Generate[A]; Solve[A]; SaveSolution[A]; } } }
PostProcessing { { Name P; NameOfFormulation F; Quantity {
  { Name U; Value { Term { [{U}]; In Electrodes; } } }
  { Name v; Value { Local { [{v}]; In Soil; Jacobian J; } } } } } }
)";

}  // namespace

TurnedField::TurnedField(double upper, double lower, double thickness)
    : TurnedField({{upper, thickness}}, lower) {}

TurnedField::TurnedField(std::vector<std::pair<double, double>> layers, double deepest)
    : layers_(std::move(layers)), deepest_(deepest) {}

void TurnedField::rod(double length, double radius) {
    electrodes_.push_back({fmt::format("Rectangle(%d) = {{{}, {}, 0, {}, {}}}", -radius, -length,
                                       2 * radius, 2 * length),
                           0, -length, radius, 0, radius / 4});
}

void TurnedField::ring(double diameter, double radius, double depth) {
    const double out = diameter / 2;
    electrodes_.push_back({fmt::format("Disk(%d) = {{{}, {}, 0, {}}}", out, -depth, radius),
                           out - radius, -depth - radius, out + radius, -depth + radius,
                           radius / 3});
}

void TurnedField::half_ball(double radius) {
    electrodes_.push_back(
        {fmt::format("Disk(%d) = {{0, 0, 0, {}}}", radius), 0, -radius, radius, 0, radius / 40});
}

std::string TurnedField::strata_geometry(int soil) const {
    std::string text;
    std::string lines;
    double depth = 0;
    int line = 1000;
    for (const auto& [rho, thickness] : layers_) {
        depth += thickness;
        text += fmt::format(
            "Point({0}) = {{0, {2}, 0}};\nPoint({1}) = {{{3}, {2}, 0}};\nLine({0}) = {{{0}, "
            "{1}}};\n",
            line, line + 1, -depth, far);
        lines += fmt::format("{}{}", lines.empty() ? "" : ", ", line);
        line += 2;
    }
    text += fmt::format("BooleanFragments{{ Surface{{{}}}; Delete; }}{{ Curve{{{}}}; Delete; }}\n",
                        soil, lines);
    text += "ground() = {};\n";
    double top = 0;
    for (std::size_t i = 0; i <= layers_.size(); ++i) {
        const double bottom = i < layers_.size() ? top + layers_[i].second : far;
        text += fmt::format("layer() = Surface In {};\nPhysical Surface({}) = layer();\n",
                            box(0, -bottom, far, -top), first_layer + static_cast<int>(i));
        text += "ground() += layer();\n";
        top = bottom;
    }
    return text;
}

std::string TurnedField::geometry() const {
    std::string text = fmt::format(
        "SetFactory(\"OpenCASCADE\");\nMesh.MshFileVersion = 2.2;\n"
        "Disk(1) = {{0, 0, 0, {0}}};\nRectangle(2) = {{0, -{0}, 0, {0}, {0}}};\n"
        "BooleanIntersection(3) = {{ Surface{{1}}; Delete; }}{{ Surface{{2}}; Delete; }};\n",
        far);
    int soil = 3;
    for (const Electrode& electrode : electrodes_) {
        std::string shape = electrode.shape;
        shape.replace(shape.find("%d"), 2, std::to_string(soil + 100));
        text += fmt::format(
            "{};\nBooleanDifference({}) = {{ Surface{{{}}}; Delete; }}{{ Surface{{{}}}; Delete; "
            "}};\n",
            shape, soil + 1, soil, soil + 100);
        ++soil;
    }
    text += strata_geometry(soil);
    text += "outer() = Abs(CombinedBoundary{ Surface{ground()}; });\n";
    text += "axis() = Curve In " + box(0, -far, 0, 0) + ";\nouter() -= axis();\n";
    text += "top() = Curve In " + box(0, 0, far, 0) + ";\nouter() -= top();\n";
    std::string fields;
    int n = 10;
    for (const Electrode& e : electrodes_) {
        text += fmt::format("metal() = Curve In {};\nmetal() -= axis();\nmetal() -= top();\n",
                            box(e.left, e.bottom, e.right, e.top));
        text += fmt::format("outer() -= metal();\nPhysical Curve({}) = metal();\n", n);
        text += fmt::format(
            "Field[{0}] = Distance; Field[{0}].CurvesList = {{metal()}};\n"
            "Field[{0}].NumPointsPerCurve = 1500;\nField[{1}] = Threshold; Field[{1}].InField = "
            "{0};\nField[{1}].SizeMin = {2}; Field[{1}].SizeMax = {3};\n"
            "Field[{1}].DistMin = 0; Field[{1}].DistMax = {3} * 6;\n",
            n, n + 500, e.finest, far / 6);
        fields += (fields.empty() ? "" : ", ") + std::to_string(n + 500);
        ++n;
    }
    text += "Physical Curve(3) = outer();\n";
    text += "Field[9] = Min; Field[9].FieldsList = {" + fields + "};\nBackground Field = 9;\n";
    return text +
           "Mesh.MeshSizeExtendFromBoundary = 0;\nMesh.MeshSizeFromPoints = 0;\n"
           "Mesh.MeshSizeFromCurvature = 0;\n";
}

std::string TurnedField::problem(int fed,
                                 const std::vector<std::pair<double, double>>& places) const {
    std::string groups = "Group { Outer = Region[3];\n";
    std::string soil;
    std::string sigma;
    for (std::size_t i = 0; i <= layers_.size(); ++i) {
        groups += fmt::format("  L{} = Region[{}];\n", i, first_layer + static_cast<int>(i));
        soil += fmt::format("{}L{}", i ? ", " : "", i);
        sigma += fmt::format("sigma[L{}] = 1 / {}; ", i,
                             i < layers_.size() ? layers_[i].first : deepest_);
    }
    std::string names;
    std::string currents;
    std::string prints;
    for (int i = 0; i < static_cast<int>(electrodes_.size()); ++i) {
        groups += fmt::format("  E{0} = Region[{1}];\n", i, 10 + i);
        names += fmt::format("{}E{}", i ? ", " : "", i);
        currents += fmt::format("{{ Region E{}; Value {}; }} ", i, i == fed ? 1 : 0);
        prints += fmt::format("Print[U, OnRegion E{}, File > \"rises.txt\", Format Table];\n", i);
    }
    for (const auto& [x, depth] : places) {
        prints += fmt::format(
            "Print[v, OnPoint {{{}, {}, 0}}, File > \"places.txt\", Format Table];\n", x, -depth);
    }
    return groups +
           fmt::format(
               "  Electrodes = Region[{{{}}}]; Soil = Region[{{{}}}];\n"
               "  All_ = Region[{{Soil, Outer, Electrodes}}]; }}\n"
               "Function {{ {}leak[] = 1 / {}; }}\n"
               "Constraint {{ {{ Name Current; Case {{ {}}} }} }}\n",
               names, soil, sigma, deepest_ * far, currents) +
           problem_text + "PostOperation { { Name P; NameOfPostProcessing P; Operation {\n" +
           prints + "} } }\n";
}

TurnedField::Answer TurnedField::solve(int fed,
                                       const std::vector<std::pair<double, double>>& places) const {
    const auto folder = std::filesystem::temp_directory_path() /
                        fmt::format("toft_elements_{}", static_cast<long>(getpid()));
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "field.geo") << geometry();
    std::ofstream(folder / "field.pro") << problem(fed, places);
    const std::string inside = "cd " + folder.string() + " && ";
    run(inside + "gmsh -2 field.geo -o field.msh", folder / "gmsh.log");
    run(inside + "getdp field.pro -msh field.msh -solve R -pos P", folder / "getdp.log");
    Answer answer{last_figures(text_of(folder / "rises.txt")),
                  last_figures(text_of(folder / "places.txt"))};
    if (answer.rises.size() != electrodes_.size() || answer.potential.size() != places.size()) {
        throw std::runtime_error("getdp left an answer out; it said:\n" +
                                 text_of(folder / "getdp.log").substr(0, 2000));
    }
    // getdp takes the ground per radian about the axis.
    for (double& v : answer.rises) v /= two_pi;
    for (double& v : answer.potential) v /= two_pi;
    std::filesystem::remove_all(folder);
    return answer;
}

}  // namespace toft::support
