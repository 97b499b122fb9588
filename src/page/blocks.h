#pragma once
// What a paper is made of, top to bottom: headings, paragraphs, tables, pictures, lines to write
// on. Pure values: how they fall on pages is settled by page/pages.h.

#include "drawing/scene.h"

#include <string>
#include <variant>
#include <vector>

namespace toft::page {

enum class Level { chapter, part };

/// Stands with what follows it.
struct Heading {
    std::string words;
    Level level = Level::part;
};

/// A paragraph; with a mark (a number, a dash) hung out to its left where one is given.
struct Words {
    std::string words;
    std::string mark = {};
    bool strong = false;
    bool small = false;  ///< as sources and workings are set
};

enum class Side { left, right };

struct Column {
    std::string head;  ///< empty in all columns: no head is set
    double share = 1;  ///< of the width, against the shares of the others
    Side side = Side::left;
};

struct Row {
    /// Fewer than columns leave the rest empty; a lone one takes the whole width and stands with
    /// the row that follows.
    std::vector<std::string> cells;
    bool strong = false;  ///< sums and names of groups
};

/// Breaks between rows only, with its head repeated; a row that no page could hold breaks inside.
struct Table {
    std::vector<Column> columns;
    std::vector<Row> rows;
    bool to_write_in = false;  ///< rows are high enough for a pen, cells have lines between them
    bool small = false;        ///< as workings are set
};

/// Made smaller to fit the width and that height, never larger; never broken.
struct Picture {
    drawing::Scene scene;
    double most_height = 420;  ///< user units
    std::string under = {};    ///< words below it
};

/// A drawing with a page of its own, standing or lying, whichever lets it be larger.
struct WholePage {
    drawing::Scene scene;
};

/// A name with a line to write on beside it, or with what is known already.
struct Field {
    std::string name;
    std::string known = {};
};

/// Framed, not to be overlooked.
struct Caution {
    std::string words;
};

struct Gap {
    double height = 12;  ///< user units; nothing at the head of a page
};

struct NewPage {};

using Block = std::variant<Heading, Words, Table, Picture, WholePage, Field, Caution, Gap, NewPage>;

struct Paper {
    std::string name;     ///< of the kind of paper
    std::string job;      ///< its title
    std::string edition;  ///< of rules and data, at the foot of every page
    std::string date;     ///< year-month-day, at the foot of every page
    std::string caution;  ///< one line at the foot of every page
    std::vector<Block> blocks;
};

}  // namespace toft::page
