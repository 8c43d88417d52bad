// Draws all charts of a study for whoever judges their looks:
//     build/dev/tests/draw_charts STUDY.toml FOLDER
// and tells what check and blocking maps cost.

#include "drawing/charts.h"
#include "input/read_study.h"

#include <chrono>
#include <filesystem>
#include <fstream>
#include <iostream>

using namespace glim;

namespace {

class Watch {
public:
    double seconds() const
    {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start_).count();
    }

private:
    std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

void draw(const std::vector<Figure>& figures, const std::filesystem::path& stem)
{
    int number = 0;
    for (const Figure& f : figures) {
        const std::string path = stem.string() + "-" + std::to_string(++number);
        std::ofstream(path + ".png", std::ios::binary) << png_of(f.drawing);
        std::ofstream(path + ".svg", std::ios::binary) << svg_of(f.drawing);
        std::cout << path << "\n    " << f.title << "\n    " << f.caption << "\n    " << f.alt
                  << "\n";
    }
}

void draw_all(const Session& session, const Findings& findings, const std::filesystem::path& folder)
{
    double mapping = 0;
    int verdicts = 0;
    for (const CheckFindings& check : findings.checks)
        for (const RowFindings& row : check.rows)
            for (const LampVerdict& verdict : row.lamps) {
                if (verdict.directions.empty())
                    continue;
                const LampLook& look = findings.looks[verdict.look];
                const Watch watch;
                const BlockingMap blocking = blocking_map(session, look, verdict, {});
                mapping += watch.seconds();
                draw(charts_of(findings, check, row, verdict, blocking),
                     folder / ("chart-" + std::to_string(++verdicts)));
            }
    std::cout << "blocking maps: " << mapping << " s\n";
}

} // namespace

int main(int argc, char** argv)
try {
    if (argc != 3) {
        std::cerr << "draw_charts STUDY.toml FOLDER\n";
        return 2;
    }
    std::filesystem::create_directories(argv[2]);
    const Session session(read_study(argv[1]));
    const Watch watch;
    const Findings findings =
        session.check(session.all_checks(), session.study().sampling.step, {});
    std::cout << "check: " << watch.seconds() << " s\n";
    draw_all(session, findings, argv[2]);
} catch (const std::exception& e) {
    std::cerr << e.what() << "\n";
    return 3;
}
