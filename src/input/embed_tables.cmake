# Every requirement table becomes part of the program, so that it needs no folder of its own.
#
# Included by src/CMakeLists.txt it adds the generated source to glim_input; run as a script
# (cmake -DTABLES=folder -DOUTPUT=file -P embed_tables.cmake) it writes that source.

if(NOT CMAKE_SCRIPT_MODE_FILE)
  file(GLOB tables CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/requirements-tables/*.toml)
  set(source ${CMAKE_BINARY_DIR}/generated/shipped_tables_text.cpp)
  add_custom_command(
    OUTPUT ${source}
    COMMAND ${CMAKE_COMMAND} -DTABLES=${CMAKE_SOURCE_DIR}/requirements-tables -DOUTPUT=${source}
            -P ${CMAKE_CURRENT_LIST_FILE}
    DEPENDS ${tables} ${CMAKE_CURRENT_LIST_FILE}
    COMMENT "Embedding the requirement tables"
    VERBATIM)
  target_sources(glim_input PRIVATE ${source})
  return()
endif()

file(GLOB tables ${TABLES}/*.toml)
list(SORT tables)
list(LENGTH tables count)
set(rows "")
foreach(table IN LISTS tables)
  get_filename_component(name ${table} NAME_WE)
  # Byte for byte, so that no character of a table can end the literal.
  file(READ ${table} hex HEX)
  string(REGEX REPLACE "(..)" "\\\\x\\1" bytes "${hex}")
  string(REPLACE "\\x0a" "\\x0a\"\n\"" bytes "${bytes}")
  string(APPEND rows "    ShippedTable{\"${name}\",\n\"${bytes}\"},\n")
endforeach()
file(WRITE ${OUTPUT} "#include \"input/shipped_tables.h\"

#include <array>

namespace glim {

namespace {

constexpr std::array<ShippedTable, ${count}> tables = {
${rows}};

} // namespace

std::span<const ShippedTable> shipped_tables()
{
    return tables;
}

} // namespace glim
")
