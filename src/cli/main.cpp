#include "cli/commands.h"
#include "cli/workbench.h"
#include "codec/job_words.h"
#include "gallery/pictures.h"
#include "portfolio/kinds.h"
#include "print/png.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstdio>
#include <exception>
#include <optional>
#include <string>
#include <vector>

namespace {

using namespace toft::cli;

constexpr const char* about =
    "toft plans, prices and draws the electricity supply from a house to an outbuilding.\n\n"
    "A job file says what the supply is, what the outbuilding is and what metal enters it, the\n"
    "route leg by leg, and the load. toft considers every buildable scheme, keeps the sound ones\n"
    "that nothing beats, and explains every figure. Start with:\n\n"
    "  toft                                 the demo job, and its picture in out/\n"
    "  toft schema job                      what a job file may say\n"
    "  toft design --distance 34 --load 5kW --earthing TN-C-S    a first answer\n"
    "  toft tables my-job.json              how far each cable reaches\n"
    "  toft design my-job.json              the recommended scheme, alternatives, what fell\n"
    "  toft ground my-job.json              soil, electrode, and what metal does if the neutral is "
    "lost\n"
    "  toft ask my-job.json                 what to go and find out, most worth first\n"
    "  toft levers my-job.json              what one change on site or in the wishes would bring\n"
    "  toft tolerance my-job.json           how sure it is while figures are other than stated\n"
    "  toft later my-job.json               what it can still feed, and what additions would take\n"
    "  toft why my-job.json                 how it should be earthed, step by step\n"
    "  toft dark my-job.json                what each fault takes with it\n"
    "  toft explain my-job.json             which figures can be explained\n"
    "  toft explain my-job.json voltage-drop\n"
    "  toft draw my-job.json -o picture.pdf\n"
    "  toft papers my-job.json -o papers/   what to hand to client, wholesaler, digger, tester\n"
    "  toft pocket my-job.json -o my-job.html   the page with the job in it, as one file\n"
    "  toft prices --csv > my-prices.csv    a price book to fill in; then --prices my-prices.csv\n"
    "  toft serve                           the page: survey on a picture, answer, papers\n"
    "  toft batch jobs.jsonl -o answers.jsonl   many jobs, one a line, on all cores\n\n"
    "A job of three facts: {\"format\": \"toft-job/1\", \"intake\": {\"earthing\": \"TN-C-S\"},\n"
    "  \"buildings\": [{\"id\": \"house\", \"at\": \"origin\"}, {\"id\": \"shed\", \"load_w\": "
    "3000}],\n"
    "  \"runs\": [{\"id\": \"feed\", \"from\": \"house\", \"to\": \"shed\",\n"
    "            \"legs\": [{\"method\": \"buried direct\", \"length_m\": 25}]}]}\n\n"
    "This work can kill. A competent, licensed person, the local code and the network operator\n"
    "decide; toft only calculates.";

constexpr const char* exit_codes =
    "Exit codes: 0 done (design: a sound scheme), 1 no sound scheme, 2 the input is at fault,\n"
    "3 the program is at fault, 4 wrong usage, 5 sound only on conditions not yet known,\n"
    "6 asked to stop before it was through.";

/// Of commands that judge no scheme.
constexpr const char* plain_exit_codes =
    "Exit codes: 0 done, 2 the input is at fault, 3 the program is at fault, 4 wrong usage.";

constexpr const char* schemas =
    "JSON Schema of job, answer, ask, levers, tolerance, later, ground, dark, first or faults; "
    "api: OpenAPI of what is served";

struct Arguments {
    DesignArguments design;
    BatchArguments batch;
    TablesArguments tables;
    ExplainArguments explain;
    GroundArguments ground;
    WhyArguments why;
    SurveyArguments ask;
    SurveyArguments levers;
    SurveyArguments later;
    ToleranceArguments tolerance;
    DarkArguments dark;
    DrawArguments draw;
    PapersArguments papers;
    PocketArguments pocket;
    PricesArguments prices;
    ServeArguments serve;
    std::string book;  ///< file of the user's own prices; empty: the invented ones
    bool rules_json = false;
    std::string schema;
};

void add_batch(CLI::App& app, BatchArguments& a) {
    auto* batch = app.add_subcommand(
        "batch", "Design many jobs, one a line: an answer a line, in the same order");
    batch->add_option("JOBS", a.jobs,
                      "file of jobs, or - for standard input (left out: standard input)");
    auto* out =
        batch->add_option("-o,--out", a.out, "file for the answers; left out: standard output");
    batch
        ->add_flag("--resume", a.resume,
                   "go on with that file after a run that was stopped, killed or cut off")
        ->needs(out);
    batch->add_option("-t,--threads", a.threads, "how many work at once (one a core)")
        ->check(CLI::Range(1, 1024));
    batch->add_option("--schemes", a.schemes, "how many schemes an answer lists at most (24)")
        ->check(CLI::Range(1, 24));
}

void add_draw(CLI::App& app, DrawArguments& a) {
    auto* draw = app.add_subcommand("draw", "Draw the job: as SVG, or as PDF or PNG for paper");
    draw->add_option("JOB", a.job, "job file, or - for standard input")->required();
    draw->add_option(
        "-o,--out", a.out,
        "file to write, ending in .svg, .pdf or .png, or in .dxf for a picture in metres; left "
        "out: SVG to standard output");
    std::vector<std::string> names;
    std::string says = "which picture:";
    for (const auto& picture : toft::gallery::pictures()) {
        names.emplace_back(picture.name);
        says += std::string(names.size() > 1 ? "; " : " ") + picture.name + ", " + picture.says;
    }
    draw->add_option("--picture", a.picture, says)->check(CLI::IsMember(names));
    draw->add_option("--upstream", a.upstream,
                     "of a pair: a device in words, such as \"BS 88-3 80 A\" (left out: the "
                     "operator's fuse)");
    draw->add_option("--downstream", a.downstream,
                     "of a pair: a device at the outbuilding, such as \"B 32 A RCBO\" (left out: "
                     "the device at the head of the run)");
    draw->add_option("--rank", a.rank, "which of the schemes design lists")
        ->check(CLI::Range(1, 1000));
    draw->add_option("--run", a.run,
                     "of a job of several runs, which (left out: the first from the house)");
    draw->add_option("--dpi", a.dpi, "dots an inch of a PNG (200)")
        ->check(CLI::Range(toft::print::least_dpi, toft::print::most_dpi));
    draw->add_option("--width", a.width,
                     "how wide an SVG or PNG is laid out, in units of 1/96 inch: 360 for a phone "
                     "(left out: for paper)")
        ->check(CLI::Range(toft::gallery::least_width, toft::gallery::most_width));
    draw->add_option("--date", a.date, "day of making that a PDF names: 2026-11-25 (today)");
}

void add_papers(CLI::App& app, PapersArguments& a) {
    auto* papers = app.add_subcommand(
        "papers", "Write the papers of a job: a PDF each, and one that holds them all");
    papers->add_option("JOB", a.job, "job file, or - for standard input")->required();
    papers->add_option("-o,--out", a.folder, "folder to write them into")->required();
    std::vector<std::string> names;
    std::string says = "only these papers:";
    for (const auto& kind : toft::paper::kinds()) {
        names.emplace_back(kind.file);
        says += std::string(names.size() > 1 ? "; " : " ") + kind.file + ", " + kind.says;
    }
    papers->add_option("--only", a.only, says)->check(CLI::IsMember(names))->delimiter(',');
    papers->add_flag("--list-prices", a.list_prices,
                     "materials.csv and materials.xlsx with prices (left out: for a wholesaler)");
    papers->add_option("--rank", a.rank, "which of the schemes design lists")
        ->check(CLI::Range(1, 1000));
    papers->add_option("--date", a.date, "day of making that they bear: 2026-11-25 (today)");
}

void add_explain(CLI::App& app, ExplainArguments& a) {
    auto* explain = app.add_subcommand("explain", "The full working of one rule or figure");
    explain->add_option("JOB", a.job, "job file, or - for standard input")->required();
    auto* name = explain->add_option("NAME", a.name, "rule or figure; left out: the list of them");
    explain->add_option(
        "--scheme", a.scheme,
        "rank in the list that design prints, or the key of any scheme, sound or fallen");
    explain->add_option("--run", a.run,
                        "of a job of several runs, which (left out: the first from the house)");
    auto* json = explain->add_flag("--json", a.json, "print the working as JSON");
    explain->add_flag("--all", a.all, "the list, then the working of each name on it")
        ->excludes(name)
        ->excludes(json);
}

void add_dark(CLI::App& app, DarkArguments& a) {
    auto* dark = app.add_subcommand(
        "dark", "What goes dark for each fault, and who asks for which residual current device");
    dark->add_option("JOB", a.job, "job file, or - for standard input")->required();
    dark->add_option("--rank", a.rank, "which of the schemes design lists")
        ->check(CLI::Range(1, 1000));
    dark->add_flag("--json", a.json, "print it as JSON");
}

/// An option for how far figures of one kind may be off.
struct Off {
    const char* name;
    const char* says;
    const char* unit;
    double most;
};

void add_off(CLI::App& command, const Off& off, std::optional<double>& into) {
    const std::string unit = off.unit;
    command.add_option(off.name, into, off.says)
        ->transform([unit](std::string text) {
            const bool ends = text.size() > unit.size() &&
                              text.compare(text.size() - unit.size(), unit.size(), unit) == 0;
            if (ends) text.resize(text.size() - unit.size());
            return text;
        })
        ->check(CLI::Range(0.0, off.most));
}

void add_tolerance(CLI::App& app, ToleranceArguments& a) {
    auto* command = app.add_subcommand(
        "tolerance", "How sure a scheme is while lengths, Ze, soil, heat and load are not exact");
    command->add_option("JOB", a.job, "job file, or - for standard input")->required();
    command->add_option("--scheme", a.scheme,
                        "rank in the list that design prints, or the key of any scheme");
    command->add_option("--run", a.run,
                        "of a job of several runs, which (left out: the first from the house)");
    auto& wish = a.wish;
    add_off(*command, {"--length", "legs may be so much off: 10%", "%", 90}, wish.length);
    add_off(*command, {"--ze", "Ze may be so much off its reading: 30%", "%", 90}, wish.ze);
    add_off(*command, {"--load", "all loads together may be so much off: 20%", "%", 90}, wish.load);
    add_off(*command, {"--soil", "resistivity of the soil: 50%", "%", 90}, wish.soil);
    add_off(*command, {"--temperature", "of air and ground, in kelvins: 5K", "K", 30},
            wish.temperature);
    command->add_flag("--as-stated", a.wish.as_stated,
                      "only ranges of the survey and what is asked for, no usual tolerances");
    command->add_flag("--open", a.wish.open,
                      "what nobody gave varies too, over the rulebook's range");
    command->add_flag("--json", a.json, "print it as JSON");
}

void add_survey(CLI::App& app, const char* name, const char* says, SurveyArguments& a) {
    auto* command = app.add_subcommand(name, says);
    command->add_option("JOB", a.job, "job file, or - for standard input")->required();
    command->add_flag("--json", a.json, "print it as JSON");
}

void add_questions(CLI::App& app, Arguments& a) {
    auto* why = app.add_subcommand("why", "How the outbuilding should be earthed, step by step");
    why->add_option("JOB", a.why.job, "job file, or - for standard input")->required();
    why->add_option("--run", a.why.run, "of a job of several runs, which (left out: all)");
    why->add_flag("--json", a.why.json, "print the steps as JSON");
    add_survey(app, "ask", "What to go and find out, most worth first, and what hangs on it",
               a.ask);
    add_survey(app, "levers",
               "What one change on site or in the wishes would save or make possible", a.levers);
    add_survey(app, "later", "What the run can still feed, and what later additions would take",
               a.later);
}

void add_prices(CLI::App& app, PricesArguments& a) {
    auto* prices = app.add_subcommand(
        "prices", "The price book: every item, its unit, its price and what it is used for");
    auto* check = prices->add_option(
        "--check", a.check, "a book of your own: its faults, what it lacks, what looks odd");
    auto* json = prices->add_flag("--json", a.json, "print it as JSON")->excludes(check);
    prices->add_flag("--csv", a.csv, "print it as a book to begin with")
        ->excludes(check)
        ->excludes(json);
}

void add_pocket(CLI::App& app, PocketArguments& a) {
    auto* pocket = app.add_subcommand(
        "pocket", "The page, the engine and a job as one file, for a phone without a network");
    pocket->footer(plain_exit_codes);
    pocket->add_option("JOB", a.job, "job file, or - for standard input")->required();
    pocket->add_option("-o,--out", a.out, "file to write: my-job.html")->required();
}

void add_serve(CLI::App& app, ServeArguments& a) {
    auto* serve = app.add_subcommand("serve", "Serves the page to browsers on this machine");
    serve->footer(plain_exit_codes);
    serve->add_option("--port", a.port, "port it listens on; 0 for any that is free")
        ->check(CLI::Range(0, 65535))
        ->capture_default_str();
    serve->add_flag("--lan", a.lan, "to other devices of the network, too, once they are paired");
    serve->add_option("--data", a.data, "folder of the store (left out: the user's own)");
    serve->add_flag("--open", a.open, "shows the page in the browser");
}

void add_handed_over(CLI::App& app, Arguments& a) {
    add_papers(app, a.papers);
    add_pocket(app, a.pocket);
    add_prices(app, a.prices);
    add_serve(app, a.serve);
}

void add_commands(CLI::App& app, Arguments& a) {
    auto* design =
        app.add_subcommand("design", "Design a job: the scheme to build and the alternatives");
    auto* job = design->add_option("JOB", a.design.job, "job file, or - for standard input");
    auto* distance = design->add_option("--distance", a.design.facts.distance,
                                        "instead of a job: metres from house to outbuilding");
    auto* load =
        design->add_option("--load", a.design.facts.load, "its load in kW, W or A, such as 5kW");
    auto* earth = design->add_option("--earthing", a.design.facts.earthing,
                                     "the supply's earth: TN-S, TN-C-S or TT");
    design->add_option("--method", a.design.facts.method,
                       "how the cable lies; left out: buried direct");
    distance->needs(load)->needs(earth)->excludes(job);
    load->needs(distance);
    earth->needs(distance);
    design->add_flag("--json", a.design.json, "print the whole answer as JSON");
    design->add_flag("--all", a.design.all,
                     "all schemes that nothing beats, not only the first 24");

    add_batch(app, a.batch);

    auto* tables = app.add_subcommand(
        "tables", "How far each cable reaches on the job's supply, by load and by limit");
    tables->add_option("JOB", a.tables.job, "job file, or - for standard input")->required();
    tables
        ->add_option("--family", a.tables.wish.families,
                     "cable families; left out: what the job offers, or armoured XLPE copper")
        ->check(CLI::IsMember(toft::codec::offered_families()));
    tables->add_option("--standard", a.tables.wish.standard, "of the devices")
        ->check(CLI::IsMember(toft::codec::device_standards()));
    tables->add_option("--curve", a.tables.wish.curve, "type of a breaker")
        ->check(CLI::IsMember({"B", "C", "D"}));
    tables->add_option("--run", a.tables.run,
                       "of a job of several runs, which (left out: the first from the house)");
    tables->add_flag("--json", a.tables.json, "print the tables as JSON");

    auto* ground = app.add_subcommand(
        "ground", "The soil, the electrode through the year, its distance, a lost neutral");
    ground->add_option("JOB", a.ground.job, "job file, or - for standard input")->required();
    ground->add_flag("--json", a.ground.json, "print it as JSON");

    add_explain(app, a.explain);
    add_questions(app, a);
    add_tolerance(app, a.tolerance);
    add_dark(app, a.dark);
    add_draw(app, a.draw);
    add_handed_over(app, a);
    auto* rules = app.add_subcommand("rules", "The rules, their clauses and what each depends on");
    rules->add_flag("--json", a.rules_json, "print them as JSON");
    app.add_subcommand("sources", "Where every figure of the tables comes from");
    auto* schema = app.add_subcommand("schema", schemas);
    schema->add_option("WHICH", a.schema, "which of them")->required();
}

/// Of every command that prices.
void add_price_books(CLI::App& app, std::string& book) {
    for (CLI::App* command : app.get_subcommands([](CLI::App*) { return true; })) {
        const std::string name = command->get_name();
        const std::vector<std::string> without = {"rules", "sources", "schema", "serve", "pocket"};
        if (std::find(without.begin(), without.end(), name) != without.end()) continue;
        command->add_option("--prices", book,
                            "your own price book, a table of comma-separated cells (left out: "
                            "invented prices)");
    }
}

int run(const CLI::App& app, const Arguments& a) {
    use_prices(a.book);
    if (app.got_subcommand("design") && a.design.job.empty() && a.design.facts.distance.empty()) {
        std::fputs("toft design needs a job file, or --distance, --load and --earthing\n", stderr);
        return wrong_usage;
    }
    if (app.got_subcommand("design")) return design(a.design);
    if (app.got_subcommand("batch")) return batch(a.batch);
    if (app.got_subcommand("tables")) return toft::cli::tables(a.tables);
    if (app.got_subcommand("ground")) return ground(a.ground);
    if (app.got_subcommand("explain")) return explain(a.explain);
    if (app.got_subcommand("why")) return why(a.why);
    if (app.got_subcommand("ask")) return ask(a.ask);
    if (app.got_subcommand("levers")) return levers(a.levers);
    if (app.got_subcommand("later")) return later(a.later);
    if (app.got_subcommand("tolerance")) return tolerance_of(a.tolerance);
    if (app.got_subcommand("dark")) return dark(a.dark);
    if (app.got_subcommand("draw")) return draw(a.draw);
    if (app.got_subcommand("papers")) return papers(a.papers);
    if (app.got_subcommand("pocket")) return pocket(a.pocket);
    if (app.got_subcommand("prices")) return prices(a.prices);
    if (app.got_subcommand("serve")) return serve(a.serve);
    if (app.got_subcommand("rules")) return rules(a.rules_json);
    if (app.got_subcommand("sources")) return sources();
    if (app.got_subcommand("schema")) return schema(a.schema);
    return demo();
}

}  // namespace

int main(int argc, char** argv) {
    try {
        CLI::App app{about, "toft"};
        app.footer(exit_codes);
        app.set_version_flag("--version", version());
        app.require_subcommand(0, 1);
        Arguments arguments;
        add_commands(app, arguments);
        add_price_books(app, arguments.book);
        try {
            app.parse(argc, argv);
        } catch (const CLI::ParseError& error) {
            const int code = app.exit(error);
            return code == 0 ? done : wrong_usage;
        }
        return run(app, arguments);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "toft: %s\n", error.what());
        return program_fault;
    }
}
