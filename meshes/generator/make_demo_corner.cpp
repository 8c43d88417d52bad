#include "generator/demo_files.h"

#include <exception>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <stdexcept>

namespace {

void write(const std::filesystem::path& path, const std::string& text)
{
    std::ofstream file(path, std::ios::binary);
    file << text;
    file.close();
    if (!file)
        throw std::runtime_error(path.string() + ": cannot be written");
}

} // namespace

/// `make_demo_corner OUTDIR` writes the mesh files of the demo corner.
int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "usage: make_demo_corner OUTDIR\n";
        return 2;
    }
    try {
        const std::filesystem::path folder = argv[1];
        std::filesystem::create_directories(folder);
        for (const glim::demo::DemoFile& file : glim::demo::demo_files())
            write(folder / file.name, file.text);
    } catch (const std::exception& failure) {
        std::cerr << "make_demo_corner: " << failure.what() << "\n";
        return 3;
    }
    return 0;
}
