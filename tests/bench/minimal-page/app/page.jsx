// The least a page made for each request costs: forty rows of text, no database.
export const dynamic = "force-dynamic";

export default function Page() {
  const rows = Array.from({ length: 40 }, (_, row) => [
    `Panel ${row}`,
    (row * 1.37).toFixed(2),
    `${Date.now()}`,
  ]);
  return (
    <table>
      <tbody>
        {rows.map((cells) => (
          <tr key={cells[0]}>
            {cells.map((cell) => (
              <td key={cell}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
