# One library toft_<folder> for each folder of src/, linked to what scripts/layers.txt lets it
# include; the program toft from src/cli; with em++ the module toft.wasm from src/wasm instead.
set(TOFT_EMBED_LIST_ONLY ON)
include(cmake/embed_data.cmake)
find_embedded_files(${CMAKE_CURRENT_SOURCE_DIR})
set(embedded_source ${CMAKE_BINARY_DIR}/generated/embedded_data.cpp)
string(MD5 names_digest "${embedded_names}")  # a file added or removed must change the command
add_custom_command(
  OUTPUT ${embedded_source}
  COMMAND ${CMAKE_COMMAND} -DSOURCE_DIR=${CMAKE_CURRENT_SOURCE_DIR} -DOUTPUT=${embedded_source}
          -DNAMES_DIGEST=${names_digest} -DTABLES_ONLY=$<BOOL:${EMSCRIPTEN}>
          -P ${CMAKE_CURRENT_SOURCE_DIR}/cmake/embed_data.cmake
  DEPENDS ${embedded_paths} cmake/embed_data.cmake
  COMMENT "Embedding data, schemas and the demo"
  VERBATIM)
# Clang and em++ warn of string literals over 64 KiB; all compilers we use take them.
set_source_files_properties(${embedded_source} PROPERTIES
  SKIP_UNITY_BUILD_INCLUSION ON
  COMPILE_OPTIONS $<$<CXX_COMPILER_ID:Clang>:-Wno-overlength-strings>)

# Beast is one file for itself; g++ 12 takes the allocator of Asio's coroutines for a mistake.
set_source_files_properties(src/http/http.cpp PROPERTIES
  SKIP_UNITY_BUILD_INCLUSION ON
  COMPILE_OPTIONS $<$<CXX_COMPILER_ID:GNU>:-Wno-mismatched-new-delete>)

# What may throw is caught in two places; as a module everything between goes without the code that
# tidies up behind a throw, which is a fault of the program or a want of memory.
if(EMSCRIPTEN)
  set_source_files_properties(src/request/request.cpp src/wasm/engine.cpp PROPERTIES
    SKIP_UNITY_BUILD_INCLUSION ON COMPILE_OPTIONS "-fexceptions;-fwasm-exceptions")
endif()

# Links target to each library that the row of folder names and that exists.
function(link_allowed target visibility folder)
  target_link_libraries(${target} ${visibility} toft_flags toft_fmt)
  foreach(allowed IN LISTS toft_may_include_${folder})
    if(TARGET toft_${allowed})
      target_link_libraries(${target} ${visibility} toft_${allowed})
    endif()
  endforeach()
endfunction()

# The built page, for whoever serves it or writes it into a file.
if(NOT EMSCRIPTEN)
  enable_language(ASM)
  set(TOFT_EMBED_PAGE_LIST_ONLY ON)
  include(cmake/embed_page.cmake)
  set(page_folder ${CMAKE_CURRENT_SOURCE_DIR}/web/dist)
  find_page_files(${page_folder})
  set(page_output ${CMAKE_BINARY_DIR}/generated/page)
  set(page_sources ${page_output}/page_bytes.S ${page_output}/page_table.cpp)
  string(MD5 page_digest "${page_names}")
  add_custom_command(
    OUTPUT ${page_sources}
    COMMAND ${CMAKE_COMMAND} -DPAGE=${page_folder} -DOUTPUT=${page_output}
            -DNAMES_DIGEST=${page_digest}
            -P ${CMAKE_CURRENT_SOURCE_DIR}/cmake/embed_page.cmake
    DEPENDS ${page_paths} cmake/embed_page.cmake
    COMMENT "Embedding the page"
    VERBATIM)
  set_source_files_properties(${page_output}/page_bytes.S PROPERTIES
    OBJECT_DEPENDS "${page_paths}")
endif()

# Third-party libraries of one folder: toft_needs_<folder>.
if(NOT EMSCRIPTEN)
  find_package(Freetype REQUIRED)
  find_library(TOFT_CAIRO cairo REQUIRED)
  set(toft_needs_print ${TOFT_CAIRO} Freetype::Freetype)
  find_library(TOFT_XLSXWRITER xlsxwriter REQUIRED)
  set(toft_needs_workbook ${TOFT_XLSXWRITER})
  find_package(SQLite3 REQUIRED)
  set(toft_needs_store SQLite::SQLite3)
  find_package(Eigen3 REQUIRED NO_MODULE)
  set(toft_needs_field Eigen3::Eigen)
  set(toft_needs_soil Eigen3::Eigen)
  find_package(Threads REQUIRED)
  find_library(TOFT_QRENCODE qrencode REQUIRED)
  find_library(TOFT_SODIUM sodium REQUIRED)
  set(toft_needs_http Threads::Threads)
  set(toft_needs_door ${TOFT_QRENCODE} ${TOFT_SODIUM})
endif()

# As a module, rooms that no answer waits for are compiled for size.
set(toft_small drawing symbol page parts picture diagram board joins curves terrain outage gallery
  digging swing paper client record portfolio ware dxf tolerance outlook groundwork trench)

set(toft_libraries)
foreach(folder IN LISTS toft_folders)
  if(folder MATCHES "^(cli|wasm)$")
    continue()
  endif()
  if(EMSCRIPTEN AND NOT folder IN_LIST toft_may_include_wasm)
    continue()
  endif()
  file(GLOB sources CONFIGURE_DEPENDS src/${folder}/*.cpp)
  file(GLOB headers CONFIGURE_DEPENDS src/${folder}/*.h)
  if(${CMAKE_CURRENT_SOURCE_DIR}/src/${folder}/embedded.h IN_LIST headers)
    list(APPEND sources ${embedded_source})
  endif()
  if(${CMAKE_CURRENT_SOURCE_DIR}/src/${folder}/page_files.h IN_LIST headers)
    list(APPEND sources ${page_sources})
  endif()
  if(sources)
    add_library(toft_${folder} STATIC ${sources})
    link_allowed(toft_${folder} PUBLIC ${folder})
    target_link_libraries(toft_${folder} PUBLIC ${toft_needs_${folder}})
  elseif(headers)
    add_library(toft_${folder} INTERFACE)
    link_allowed(toft_${folder} INTERFACE ${folder})
  else()
    continue()
  endif()
  list(APPEND toft_libraries toft_${folder})
  if(EMSCRIPTEN AND sources AND folder IN_LIST toft_small)
    target_compile_options(toft_${folder} PRIVATE -Oz)
  endif()
endforeach()

file(GLOB cli_sources CONFIGURE_DEPENDS src/cli/*.cpp)
if(cli_sources AND NOT EMSCRIPTEN)
  add_executable(toft ${cli_sources})
  link_allowed(toft PRIVATE cli)
  target_link_libraries(toft PRIVATE Threads::Threads)
endif()

if(EMSCRIPTEN)
  include(cmake/modules.cmake)
endif()
