# One GoogleTest program toft_test_<folder> for each folder of tests/, and one ctest for each file
# of tests/must_not_compile. TOFT_TEST_FOLDERS narrows that to some folders.
set(not_gtest support must_not_compile fuzz wasm)
file(GLOB test_sources CONFIGURE_DEPENDS tests/*/*.cpp)
set(test_folders)
foreach(source IN LISTS test_sources)
  cmake_path(GET source PARENT_PATH folder)
  cmake_path(GET folder FILENAME folder)
  if(folder IN_LIST not_gtest OR (TOFT_TEST_FOLDERS AND NOT folder IN_LIST TOFT_TEST_FOLDERS))
    continue()
  endif()
  list(APPEND test_folders ${folder})
  list(APPEND sources_of_${folder} ${source})
endforeach()
list(REMOVE_DUPLICATES test_folders)

# Replaces operator new: only for the programs that count.
set(counted_new ${CMAKE_CURRENT_SOURCE_DIR}/tests/support/counted_new.cpp)
set_source_files_properties(${counted_new} PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
set(counting price rules study)

file(GLOB support_sources CONFIGURE_DEPENDS tests/support/*.cpp)
list(REMOVE_ITEM support_sources ${counted_new})
if(support_sources)
  add_library(toft_test_support STATIC ${support_sources})
  target_include_directories(toft_test_support PUBLIC tests)
  target_link_libraries(toft_test_support PUBLIC
    ${toft_libraries} toft_flags GTest::gtest rapidcheck)
endif()

# The longest come first, so that no core waits for one of them at the end.
set(longest_last rules picture search soil laws answer tables field)

# TOFT_BINARY is there once everything is built; only toft_test_cli and _server wait for it on their own.
foreach(folder IN LISTS test_folders)
  set(program toft_test_${folder})
  add_executable(${program} ${sources_of_${folder}})
  target_include_directories(${program} PRIVATE tests)
  target_compile_definitions(${program} PRIVATE TOFT_SOURCE_DIR="${CMAKE_CURRENT_SOURCE_DIR}")
  if(support_sources)
    target_link_libraries(${program} PRIVATE toft_test_support)
  endif()
  target_link_libraries(${program} PRIVATE
    ${toft_libraries} toft_flags GTest::gtest_main rapidcheck)
  if(TARGET toft)
    target_compile_definitions(${program} PRIVATE TOFT_BINARY="$<TARGET_FILE:toft>")
  endif()
  if(folder IN_LIST counting)
    target_sources(${program} PRIVATE ${counted_new})
  endif()
  if(folder STREQUAL "outlook")  # its documents are held against their schemas
    target_sources(${program} PRIVATE tests/codec/schema_walk.cpp)
  endif()
  if(folder STREQUAL "soil")
    target_link_libraries(${program} PRIVATE Ceres::ceres)
  endif()
  if(folder MATCHES "^(cli|server)$" AND TARGET toft)
    add_dependencies(${program} toft)
  endif()
  add_test(NAME ${program} COMMAND ${program})
  list(FIND longest_last ${folder} cost)
  math(EXPR cost "10 * (${cost} + 1)")
  set_tests_properties(${program} PROPERTIES TIMEOUT 2400 COST ${cost})
endforeach()

file(GLOB refused_sources CONFIGURE_DEPENDS tests/must_not_compile/*.cpp)
if(TOFT_TEST_FOLDERS)
  set(refused_sources)
endif()
foreach(source IN LISTS refused_sources)
  cmake_path(GET source STEM stem)
  add_test(NAME must_not_compile.${stem}
    COMMAND ${CMAKE_COMMAND} -DCOMPILER=${CMAKE_CXX_COMPILER} -DSOURCE=${source}
            -DINCLUDE=${CMAKE_CURRENT_SOURCE_DIR}/src
            -P ${CMAKE_CURRENT_SOURCE_DIR}/cmake/must_not_compile.cmake)
endforeach()
