"""Laws of the tables in data/, used by scripts/check_data."""
