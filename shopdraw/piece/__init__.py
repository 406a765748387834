"""The piece file: typed inputs, units, errors with line and key, versions, saving."""
