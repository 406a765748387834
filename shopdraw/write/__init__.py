"""Files: PDF, DXF, flat files for the router, CSV and XLSX. Knows file formats; knows nothing of the trade."""
