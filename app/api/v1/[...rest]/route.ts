import { NO_SUCH_ADDRESS, problemResponse } from "../_answers/problem.ts";

const nothing = () => problemResponse(NO_SUCH_ADDRESS);

export { nothing as DELETE, nothing as GET, nothing as PATCH, nothing as POST, nothing as PUT };
