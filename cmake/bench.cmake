# One Google Benchmark program toft_bench_<stem> for each bench/*.cpp; target `bench` builds and
# runs them all. Benches print; nothing judges their seconds.
file(GLOB bench_sources CONFIGURE_DEPENDS bench/*.cpp)
add_custom_target(bench)
foreach(source IN LISTS bench_sources)
  cmake_path(GET source STEM stem)
  set(program toft_bench_${stem})
  add_executable(${program} ${source})
  target_compile_definitions(${program} PRIVATE TOFT_SOURCE_DIR="${CMAKE_CURRENT_SOURCE_DIR}")
  target_link_libraries(${program} PRIVATE ${toft_libraries} toft_flags benchmark::benchmark_main)
  add_custom_target(run_${program} COMMAND ${program} USES_TERMINAL)
  add_dependencies(bench run_${program})
endforeach()
