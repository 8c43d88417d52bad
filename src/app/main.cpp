#include "app/program.h"
#include "machine/standard_output.h"

int main(int count, char** words)
{
    glim::survive_broken_pipes();
    return glim::run_program({words + 1, words + count});
}
