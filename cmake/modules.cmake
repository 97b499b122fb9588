# The engine as WebAssembly, twice: toft-first.wasm answers while a job of one run is drawn up and is
# small, so that the page answers soon after its first visit; toft.wasm does everything, is compiled
# for speed and takes over once it is there. Page: docs/page.md.

# module(NAME FILES...): the engine over what is linked to it.
function(add_module name)
  add_executable(${name}.wasm src/wasm/engine.cpp ${ARGN})
  set_target_properties(${name}.wasm PROPERTIES OUTPUT_NAME ${name} SUFFIX .wasm)
  target_link_libraries(${name}.wasm PRIVATE toft_flags)
  target_link_options(${name}.wasm PRIVATE --no-entry -sSTANDALONE_WASM -sALLOW_MEMORY_GROWTH=1
    -sEXPORTED_FUNCTIONS=_malloc,_free)
endfunction()

add_module(toft)
link_allowed(toft.wasm PRIVATE wasm)
target_compile_definitions(toft.wasm PRIVATE TOFT_ALL_VERBS)

# Tables without the notes, the places in their sources and what only later questions need.
find_package(Python3 REQUIRED COMPONENTS Interpreter)
set(slim ${CMAKE_BINARY_DIR}/generated/slim)
set(slim_source ${CMAKE_BINARY_DIR}/generated/slim_data.cpp)
add_custom_command(
  OUTPUT ${slim_source}
  COMMAND ${Python3_EXECUTABLE} ${CMAKE_CURRENT_SOURCE_DIR}/cmake/slim_tables.py
          ${CMAKE_CURRENT_SOURCE_DIR}/data ${slim}/data
  COMMAND ${CMAKE_COMMAND} -DSOURCE_DIR=${slim} -DOUTPUT=${slim_source} -DNAMES_DIGEST=${names_digest}
          -DTABLES_ONLY=ON -P ${CMAKE_CURRENT_SOURCE_DIR}/cmake/embed_data.cmake
  DEPENDS ${embedded_paths} cmake/embed_data.cmake cmake/slim_tables.py
  COMMENT "Embedding the tables of the first module"
  VERBATIM)
set_source_files_properties(${slim_source} PROPERTIES
  SKIP_UNITY_BUILD_INCLUSION ON COMPILE_OPTIONS "-Wno-overlength-strings")

# The rooms that the first answer is worked out in, compiled once more, for size. What they call of
# the others stands in src/wasm/elsewhere.cpp.
set(first_rooms base tables network cable device earth shock site demand circuit study earthing walk
  finding finals existing rules price guard special loss search worked answer codec)
set(first_sources ${slim_source} cmake/fmt_library.cpp src/field/electrode_shape.cpp)
foreach(verb IN ITEMS about body bench check first first_verbs request told)
  list(APPEND first_sources src/request/${verb}.cpp)
endforeach()
foreach(folder IN LISTS first_rooms)
  file(GLOB sources CONFIGURE_DEPENDS src/${folder}/*.cpp)
  list(FILTER sources EXCLUDE REGEX "/answer/design_tree.cpp$")
  if(sources)
    add_library(toft_first_${folder} STATIC ${sources})
    target_link_libraries(toft_first_${folder} PUBLIC toft_flags)
    target_compile_options(toft_first_${folder} PRIVATE -Oz)
    list(APPEND first_libraries toft_first_${folder})
  endif()
endforeach()
add_library(toft_first_rest STATIC ${first_sources})
target_link_libraries(toft_first_rest PUBLIC toft_flags)
target_compile_options(toft_first_rest PRIVATE -Oz)

add_module(toft-first src/wasm/elsewhere.cpp)
set_source_files_properties(src/wasm/elsewhere.cpp PROPERTIES
  COMPILE_OPTIONS "-fexceptions;-fwasm-exceptions")
target_compile_options(toft-first.wasm PRIVATE -Oz)
target_link_options(toft-first.wasm PRIVATE -Oz
  -sBINARYEN_EXTRA_PASSES=--low-memory-unused,--converge)
target_link_libraries(toft-first.wasm PRIVATE ${first_libraries} toft_first_rest)
